interface Label {
  readonly key: string;
  readonly y: number;
}

/** Moves labels apart so that none covers another, keeping their order. */
export function spreadLabels<L extends Label>(
  labels: readonly L[],
  gap: number,
  top: number,
  bottom: number,
): L[] {
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const spread: L[] = [];
  let below = top - gap;
  for (const label of sorted) {
    const y = Math.max(label.y, below + gap);
    spread.push({ ...label, y });
    below = y;
  }
  const overflow = Math.max(0, below - bottom);
  return spread.map((label) => ({ ...label, y: label.y - overflow }));
}
