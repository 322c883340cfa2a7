/** Between the names of lines that are one; at the line's end they stand under each other. */
export const AND_THE_SAME = ' = ';

interface Label {
  readonly key: string;
  readonly y: number;
}

/**
 * Moves labels apart so that none covers another and none leaves the frame, keeping their order; where
 * there is not so much room for all, they share what there is.
 */
export function spreadLabels<L extends Label>(
  labels: readonly L[],
  gap: number,
  top: number,
  bottom: number,
): L[] {
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const last = sorted.length - 1;
  const by = Math.min(gap, Math.max(0, bottom - top) / Math.max(1, last));
  let above = top - by;
  return sorted
    .map((label) => ({ ...label, y: (above = Math.max(label.y, above + by)) }))
    .map((label, i) => ({ ...label, y: Math.min(label.y, bottom - (last - i) * by) }));
}
