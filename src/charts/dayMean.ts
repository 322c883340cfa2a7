/** The mean over the 24 hours around each hour; at both ends, over the first or last 24. */
export function dayMean(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = sums[i]! + values[i]!;
  const last = Math.max(0, values.length - 24);
  const count = Math.min(24, values.length);
  return values.map((_, i) => {
    const from = Math.max(0, Math.min(last, i - 12));
    return (sums[from + count]! - sums[from]!) / count;
  });
}
