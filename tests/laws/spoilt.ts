/** Puts a value in place of another somewhere in a tree of parts. */
export function spoilt(tree: unknown, place: readonly number[], value: unknown): unknown {
  const [first, ...rest] = place;
  if (first === undefined || typeof tree !== 'object' || tree === null) return value;
  const keys = Object.keys(tree);
  if (keys.length === 0) return value;
  const key = keys[first % keys.length]!;
  const inner = spoilt((tree as Record<string, unknown>)[key], rest, value);
  return Array.isArray(tree)
    ? tree.map((item: unknown, i) => (String(i) === key ? inner : item))
    : { ...tree, [key]: inner };
}
