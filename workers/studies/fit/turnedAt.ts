import { hoursOf } from '../../../shared/log/localTime';
import type { Scenario } from '../../../shared/scenario/schema';

/** What a tank ran by until it was turned, local time: what was dosed then is not what is dosed now. */
export interface RanUntil {
  readonly until: string;
  readonly plan: Scenario;
}

/** What was dosed until an hour of the log. */
export interface Earlier {
  readonly untilH: number;
  readonly dosing: Pick<Scenario, 'dosers' | 'topOff' | 'calciumReactor'>;
}

/** What was dosed until each turn that came later than an hour, counted from it, in order of time. */
export const turnsSince = (ran: readonly RanUntil[], sinceH: number): Earlier[] =>
  ran
    .map(({ until, plan: { dosers, topOff, calciumReactor } }) => ({
      untilH: hoursOf(until) - sinceH,
      dosing: { dosers, topOff, calciumReactor },
    }))
    .filter(({ untilH }) => untilH > 0)
    .toSorted((a, b) => a.untilH - b.untilH);

/**
 * What was dosed before each turn of a log, in order of time. A turn after the last reading changes
 * nothing of what was read: the log ends with what ran until then, and only what comes is dosed anew.
 */
export function earlierOf(
  ran: readonly RanUntil[],
  startH: number,
  lastH: number,
): readonly Earlier[] {
  const turns = turnsSince(ran, startH);
  const after = turns.find(({ untilH }) => untilH >= lastH);
  return [
    ...turns.filter(({ untilH }) => untilH < lastH),
    ...(after ? [{ ...after, untilH: lastH }] : []),
  ];
}
