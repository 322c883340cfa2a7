/** Whether two values say the same, in whichever order their fields stand; a field left out is none. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const of = (tree: object, key: string) => (tree as Record<string, unknown>)[key];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].every((key) =>
    same(of(a, key), of(b, key)),
  );
}
