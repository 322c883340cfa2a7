export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The points worth drawing between two rows: all of them, or, when there are more than pixels,
 * the lowest and highest of each pixel column in the order they come, so that no peak is lost.
 */
export function decimate(
  x: (row: number) => number,
  values: Float64Array,
  fromRow: number,
  toRow: number,
  pixels: number,
): Point[] {
  const count = toRow - fromRow + 1;
  const at = (row: number): Point => ({ x: x(row), y: values[row]! });
  if (count <= 2 * pixels) return Array.from({ length: count }, (_, i) => at(fromRow + i));
  const points: Point[] = [];
  for (let column = 0; column < pixels; column++) {
    const first = fromRow + Math.floor((column * count) / pixels);
    const last = fromRow + Math.floor(((column + 1) * count) / pixels) - 1;
    let [low, high] = [first, first];
    for (let row = first; row <= last; row++) {
      if (values[row]! < values[low]!) low = row;
      if (values[row]! > values[high]!) high = row;
    }
    points.push(at(Math.min(low, high)));
    if (low !== high) points.push(at(Math.max(low, high)));
  }
  return points;
}
