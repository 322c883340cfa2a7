import { bisectRight } from 'd3-array';

/** A course that is known at some times, at every hour from its first to its last. */
export function hourByHour(
  timesH: readonly number[],
  values: readonly number[],
): { readonly fromH: number; readonly values: Float64Array } {
  const fromH = timesH[0] ?? 0;
  const hours = Math.max(0, Math.floor((timesH.at(-1) ?? 0) - fromH));
  const at = (timeH: number) => {
    const k = Math.min(timesH.length - 1, bisectRight(timesH, timeH));
    const before = Math.max(0, k - 1);
    const gap = timesH[k]! - timesH[before]!;
    const share = gap > 0 ? Math.min(1, (timeH - timesH[before]!) / gap) : 0;
    return values[before]! + share * (values[k]! - values[before]!);
  };
  return { fromH, values: Float64Array.from({ length: hours + 1 }, (_, i) => at(fromH + i)) };
}
