import { seasonQuantities, type SeasonId } from '../season/quantity';
import { daily, leavesOn, type SeasonTank } from '../season/seasonTank';
import type { Replay } from './replay';

/** One of the three that is inside its band and leaves it by what is done first. */
export interface LeavesSooner {
  readonly id: SeasonId;
  readonly side: 'above' | 'below';
  readonly limit: number;
  /** At the use that is worst for it, counted from 1. */
  readonly day: number;
}

/** What leaves its band sooner in the first of two runs than in the other, at any use; nothing of what is outside at once. */
export function leavesSooner(
  tank: SeasonTank,
  pairs: readonly (readonly [run: Replay, without: Replay])[],
): LeavesSooner[] {
  return seasonQuantities.flatMap(({ id }): LeavesSooner[] => {
    const band = tank.band(id);
    const [soonest] = pairs
      .flatMap(([run, without]) => {
        const means = daily(run, id);
        const day = leavesOn(means, band);
        const anyway = leavesOn(daily(without, id), band) ?? Infinity;
        return day === undefined || day >= anyway ? [] : [{ day, mean: means[day]! }];
      })
      .toSorted((a, b) => a.day - b.day);
    if (!soonest) return [];
    const side = soonest.mean > band.high ? 'above' : 'below';
    return [{ id, side, limit: side === 'above' ? band.high : band.low, day: soonest.day + 1 }];
  });
}
