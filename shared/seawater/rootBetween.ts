/** The root of a rising function between two ends, to the last digits: bisection. */
export function rootBetween(low: number, high: number, f: (x: number) => number): number {
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (f(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
