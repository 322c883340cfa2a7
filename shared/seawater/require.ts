/** Refuses a number that is not finite or lies outside the range: quantity, value and expectation. */
export function requireBetween(quantity: string, value: number, least: number, most: number): void {
  if (value >= least && value <= most) return;
  throw new RangeError(`${quantity} is ${value}; expected a number from ${least} to ${most}`);
}

// The widest water any formula here is asked about; the fitted ranges are narrower (outOfRange).
export function requireWater(tempC: number, salinityPractical: number): void {
  requireBetween('tempC', tempC, -5, 60);
  requireBetween('salinityPractical', salinityPractical, 0, 100);
}
