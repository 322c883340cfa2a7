/** Decimals that a step of an input calls for: 0.05 → 2. */
export const decimalsOf = (step: number): number =>
  step >= 1 ? 0 : Math.min(4, Math.ceil(-Math.log10(step) - 1e-9));

/** A number as it stands in an input: no more decimals than it needs, at least those of a step. */
export function inputText(value: number, step: number): string {
  const decimals = decimalsOf(step);
  const fixed = value.toFixed(decimals);
  return Math.abs(Number(fixed) - value) < 1e-9 * Math.max(1, Math.abs(value))
    ? fixed
    : String(Number(value.toPrecision(6)));
}
