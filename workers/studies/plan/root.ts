const MOST_TRIES = 24;

/**
 * Where a rising function of a dose meets zero, to ± `close` in the function: false position with
 * the Illinois rule, since every try is a run of the tank. Undefined when the ends do not embrace it.
 */
export function doseWhere(
  f: (dose: number) => number,
  low: number,
  high: number,
  close: number,
): number | undefined {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (Math.abs(fa) <= close) return a;
  if (Math.abs(fb) <= close) return b;
  if (fa > 0 || fb < 0) return undefined;
  let last = 0;
  for (let i = 0; i < MOST_TRIES; i++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (Math.abs(fx) <= close) return x;
    if (fx < 0) {
      [a, fa] = [x, fx];
      if (last < 0) fb /= 2;
    } else {
      [b, fb] = [x, fx];
      if (last > 0) fa /= 2;
    }
    last = Math.sign(fx);
  }
  return (a + b) / 2;
}
