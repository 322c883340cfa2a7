/** The lowest and highest of the 24 hours around each hour; at both ends, of the first or last 24. */
export function dayRange(values: Float64Array): { low: Float64Array; high: Float64Array } {
  const last = Math.max(0, values.length - 24);
  const extremeOf = (beats: (a: number, b: number) => boolean) =>
    values.map((_, i) => {
      const from = Math.max(0, Math.min(last, i - 12));
      let extreme = values[from]!;
      for (let k = from + 1; k < Math.min(values.length, from + 24); k++) {
        if (beats(values[k]!, extreme)) extreme = values[k]!;
      }
      return extreme;
    });
  return { low: extremeOf((a, b) => a < b), high: extremeOf((a, b) => a > b) };
}
