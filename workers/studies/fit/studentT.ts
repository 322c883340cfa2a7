/** A reading three σ off happens, one six σ off is a slip (Lange, Little & Taylor 1989). */
export const FREEDOM = 4;
/** A t of the same Fisher information as a normal is so much narrower, in variance. */
export const NARROWER = (FREEDOM + 3) / (FREEDOM + 1);

/** How much a reading counts by its squared error in σ: its variance is σ² over this. */
export const weightOf = (squared: number): number =>
  (NARROWER * (FREEDOM + 1)) / (FREEDOM + NARROWER * squared);

/**
 * What such weights cost, to be added to the log evidence that a normal has under them: readings may
 * not be called slips for nothing. The sum is the variational bound of a t, seen as a normal whose
 * precision is drawn from a gamma (Tipping & Lawrence 2005, from memory), but for a constant.
 */
export const priceOf = (weights: readonly number[]): number =>
  weights.reduce((sum, weight) => {
    const precision = weight / NARROWER;
    return sum + (FREEDOM / 2) * (Math.log(precision) - precision + 1);
  }, 0);

/** Weights of a plain fit's leftovers, on the scale of their own median. */
export function firstWeights(leftInSigma: readonly number[]): number[] {
  const sizes = leftInSigma.map(Math.abs).toSorted((a, b) => a - b);
  // The median of |normal| is 0.6745 σ.
  const scale = Math.max(0.7, (sizes[Math.floor(sizes.length / 2)] ?? 0) / 0.6745);
  return leftInSigma.map((left) => weightOf((left / scale) ** 2));
}
