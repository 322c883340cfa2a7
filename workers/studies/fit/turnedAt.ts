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

/** The turns that fall within a log, in order of time. */
export const earlierOf = (
  ran: readonly RanUntil[],
  startH: number,
  lastH: number,
): readonly Earlier[] =>
  ran
    .map(({ until, plan: { dosers, topOff, calciumReactor } }) => ({
      untilH: hoursOf(until) - startH,
      dosing: { dosers, topOff, calciumReactor },
    }))
    .filter(({ untilH }) => untilH > 0 && untilH < lastH)
    .toSorted((a, b) => a.untilH - b.untilH);
