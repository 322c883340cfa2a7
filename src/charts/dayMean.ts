import { dayAround } from './dayAround';

/** The mean over the day around each hour. */
export function dayMean(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = sums[i]! + values[i]!;
  return values.map((_, i) => {
    const [from, to] = dayAround(i, values.length);
    return (sums[to]! - sums[from]!) / (to - from);
  });
}
