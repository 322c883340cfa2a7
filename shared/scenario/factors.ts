/** Expressions of time, sampled at every hour of a trial; absent where the expression is plain 1. */
export interface Factors {
  readonly evaporation?: Float64Array;
  readonly roomCo2?: Float64Array;
}

export const noFactors: Factors = {};

/** A factor between two sampled hours, on the straight line; held at both ends. */
export function factorAt(table: Float64Array | undefined, timeH: number): number {
  if (!table) return 1;
  const at = Math.max(0, Math.min(table.length - 1, timeH));
  const hour = Math.min(table.length - 2, Math.floor(at));
  if (hour < 0) return table[0]!;
  return table[hour]! + (table[hour + 1]! - table[hour]!) * (at - hour);
}
