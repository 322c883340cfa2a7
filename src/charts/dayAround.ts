/** The rows of the 24 hours around an hour, the last one not included; at both ends, the first or last 24. */
export function dayAround(row: number, rows: number): [number, number] {
  const from = Math.max(0, Math.min(rows - 24, row - 12));
  return [from, Math.min(rows, from + 24)];
}
