/** A straight line through readings, by least squares. */
export interface Line {
  /** Change in a day, dKH. */
  readonly slopeDkhPerDay: number;
  /** Standard error of the slope when each reading strays by σ: σ/√Σ(t − t̄)². */
  readonly standardErrorDkhPerDay: number;
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** The plain line: what a keeper does with pencil and ruler. Doses between the tests mislead it. */
export function straightLine(
  timesDays: readonly number[],
  dkh: readonly number[],
  sigmaDkh: number,
): Line {
  const [middle, level] = [mean(timesDays), mean(dkh)];
  const spread = timesDays.reduce((sum, t) => sum + (t - middle) ** 2, 0);
  const rise = timesDays.reduce((sum, t, i) => sum + (t - middle) * (dkh[i]! - level), 0);
  return {
    slopeDkhPerDay: rise / spread,
    standardErrorDkhPerDay: sigmaDkh / Math.sqrt(spread),
  };
}

/**
 * Days between two tests after which their slope is known to ± `withinDkhPerDay` at `k` standard
 * errors: k·σ·√2 / e.
 */
export const daysBetweenTwoTests = (withinDkhPerDay: number, sigmaDkh: number, k = 2): number =>
  (k * sigmaDkh * Math.SQRT2) / withinDkhPerDay;
