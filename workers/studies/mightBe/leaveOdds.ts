import { randomLcg, randomNormal } from 'd3-random';
import type { Scenario } from '../../../shared/scenario/schema';

const SEED = 0.618034;
const DRAWS = 400;
/** A level that leaves and comes back within this is no matter, h. */
const EVERY_H = 3;

/** How one unknown moves the water, hour by hour in dKH, when it is so many σ less and as many more. */
export interface Moves {
  readonly sigmas: number;
  readonly less: ArrayLike<number>;
  readonly more: ArrayLike<number>;
}

/**
 * Share of tanks whose alkalinity is outside the keeper's limits at some time of the run; each unknown
 * is drawn, and moves the water by as much of its own move to that side.
 */
export function leaveOdds(
  set: ArrayLike<number>,
  moves: readonly Moves[],
  { alkalinityLowDkh: low, alkalinityHighDkh: high }: Scenario['limits'],
): number {
  const normal = randomNormal.source(randomLcg(SEED))(0, 1);
  let left = 0;
  for (let n = 0; n < DRAWS; n++) {
    const drawn = moves.map(({ sigmas, less, more }) => {
      const z = normal();
      return { share: Math.abs(z) / sigmas, by: z < 0 ? less : more };
    });
    for (let hour = 0; hour < set.length; hour += EVERY_H) {
      let dkh = set[hour]!;
      for (const { share, by } of drawn) dkh += share * by[hour]!;
      if (dkh >= low && dkh <= high) continue;
      left++;
      break;
    }
  }
  return left / DRAWS;
}
