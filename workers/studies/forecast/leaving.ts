import { quantileSorted } from 'd3-array';
import { randomLcg, randomNormal } from 'd3-random';
import type { Band } from '../../../shared/scenario/limitBands';
import type { Square } from '../fit/leastSquares';
import type { Ahead } from './fan';

/** When the water leaves the keeper's band, with odds. */
export interface Leaving {
  /** Share of the fits that the log allows whose water leaves within the forecast. */
  readonly odds: number;
  readonly side: 'low' | 'high';
  /** Hours since the end of the log by which 1 in 10, and half of them, have left. */
  readonly oneInTenH: number | undefined;
  readonly halfH: number | undefined;
}

const SEED = 0.271828;
const DRAWS = 500;
/** A test and a day's swing are over by then. */
const COMES_IN_H = 72;

/** L with LLᵀ = C; what is known exactly stays exactly so. */
export function rootOf(c: Square): number[][] {
  const root = c.map((row) => row.map(() => 0));
  c.forEach((row, i) => {
    for (let k = 0; k <= i; k++) {
      const rest = row[k]! - root[i]!.slice(0, k).reduce((sum, l, j) => sum + l * root[k]![j]!, 0);
      root[i]![k] =
        i === k ? Math.sqrt(Math.max(0, rest)) : root[k]![k]! > 0 ? rest / root[k]![k]! : 0;
    }
  });
  return root;
}

/** Undefined when the water is outside already when the log ends. */
export function leavingOf(
  { timesH, dkh, slopes, byLawDkh, restless }: Ahead,
  covariance: Square,
  { low, high }: Band,
): Leaving | undefined {
  if (dkh[0]! < low || dkh[0]! > high) return undefined;
  const root = rootOf(covariance);
  const normal = randomNormal.source(randomLcg(SEED))(0, 1);
  const inAnHour = Math.sqrt(1 / 24);
  const left = Array.from({ length: DRAWS }, () => {
    const z = covariance.map(() => normal());
    const law = normal();
    // What begins outside and soon comes in leaves nothing by that.
    let wasInside = false;
    const step = root.map((row) => row.reduce((sum, l, i) => sum + l * z[i]!, 0));
    for (let k = 0; k < timesH.length; k++) {
      // Level and use wander on from look to look.
      if (k > 0) {
        step[0]! += normal() * restless.levelDkh * inAnHour;
        step[1]! += normal() * restless.useDkhPerDay * inAnHour * AVERAGE_REACH;
      }
      const value =
        dkh[k]! + law * byLawDkh[k]! + step.reduce((sum, by, i) => sum + by * slopes[k]![i]!, 0);
      const isInside = value >= low && value <= high;
      if (!isInside && wasInside) return { timeH: timesH[k]!, below: value < low };
      if (!isInside && k >= COMES_IN_H) return { timeH: timesH[0]!, below: value < low };
      wasInside ||= isInside;
    }
    return undefined;
  });
  const gone = left.filter((one) => one !== undefined);
  const hours = left.map((one) => one?.timeH ?? Infinity).toSorted((a, b) => a - b);
  const by = (part: number) => {
    const timeH = quantileSorted(hours, part)!;
    return Number.isFinite(timeH) ? timeH : undefined;
  };
  return {
    odds: gone.length / DRAWS,
    side: gone.filter(({ below }) => below).length * 2 >= gone.length ? 'low' : 'high',
    oneInTenH: by(0.1),
    halfH: by(0.5),
  };
}

/** A use that changed on the way has acted for a part of it only: 1/√3 of the whole, as ∫t² has it. */
const AVERAGE_REACH = 1 / Math.sqrt(3);
