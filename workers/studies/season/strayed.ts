import { mean } from 'd3-array';

/** How far readings drift from a run over so many days, and one σ of it. */
export interface Strayed {
  readonly by: number;
  readonly sigma: number;
}

/** From so many readings on their own scatter says more of the kit than common practice does. */
const TELLS_SCATTER = 5;

/**
 * The straight line through what the readings are off the run (least squares), times the days: a
 * kit that reads a constant too high strays by nothing. σ is the larger of what such kits repeat
 * to and what these strayed about the line.
 */
export function strayed(
  timesH: readonly number[],
  off: readonly number[],
  kitSigma: number,
): Strayed {
  const [middle, level] = [mean(timesH)!, mean(off)!];
  const spread = timesH.reduce((sum, t) => sum + (t - middle) ** 2, 0);
  const slope = timesH.reduce((sum, t, i) => sum + (t - middle) * (off[i]! - level), 0) / spread;
  const overH = timesH.at(-1)! - timesH[0]!;
  const squares = timesH.reduce(
    (sum, t, i) => sum + (off[i]! - level - slope * (t - middle)) ** 2,
    0,
  );
  const scatter =
    timesH.length < TELLS_SCATTER ? 0 : Math.sqrt(squares / Math.max(1, timesH.length - 2));
  const sigma = Math.max(kitSigma, scatter);
  return { by: slope * overH, sigma: (sigma * overH) / Math.sqrt(spread) };
}
