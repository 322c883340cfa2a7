import type { Scenario } from '../../../shared/scenario/schema';

/** Use is what the corals took in the last two days: whole days, so that the hour does not matter. */
const USE_OVER_H = 48;
/** Less than a day takes more by light than by dark. */
const LEAST_USE_H = 24;

/** What ran from an hour of the log on. */
export interface Stretch {
  readonly fromH: number;
  /** What takes alkalinity, against the log's first hour: corals added or taken out. */
  readonly times: number;
  readonly scenario: Scenario;
}

/**
 * Between what the use is measured at the log's end, and by how much it is to be multiplied: two days,
 * before the corals last changed where that was less than a day ago.
 */
export function useOver(later: readonly Stretch[], endH: number) {
  const stocked = later.filter(({ times }, i) => times !== (later[i - 1]?.times ?? 1));
  const last = stocked.findLast(({ fromH }) => fromH > endH - USE_OVER_H);
  if (!last) return { fromH: Math.max(0, endH - USE_OVER_H), toH: endH, times: 1 };
  if (endH - last.fromH >= LEAST_USE_H) return { fromH: last.fromH, toH: endH, times: 1 };
  const before = stocked[stocked.indexOf(last) - 1];
  const fromH = Math.max(before?.fromH ?? 0, last.fromH - USE_OVER_H);
  const times = last.times / (before?.times ?? 1);
  // Corals that changed when the log had hardly begun: what little there is tells most.
  return last.fromH - fromH >= LEAST_USE_H
    ? { fromH, toH: last.fromH, times }
    : { fromH: last.fromH < endH ? last.fromH : 0, toH: endH, times: 1 };
}
