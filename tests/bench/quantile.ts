/** The value below which this part of a sample lies. */
export function quantile(sample: readonly number[], part: number): number {
  const sorted = [...sample].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!;
}
