import { same } from './same';

interface Merged {
  readonly value: unknown;
  /** Whether both have changed the same thing, each otherwise: ours stands. */
  readonly clash: boolean;
}

const isTree = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** One value out of two that began alike, field by field; a list is one thing. */
export function threeWay(base: unknown, mine: unknown, theirs: unknown): Merged {
  if (same(theirs, base) || same(mine, theirs)) return { value: mine, clash: false };
  if (same(mine, base)) return { value: theirs, clash: false };
  if (!isTree(base) || !isTree(mine) || !isTree(theirs)) return { value: mine, clash: true };
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
  const fields = keys.map((key) => [key, threeWay(base[key], mine[key], theirs[key])] as const);
  const kept = fields.flatMap(([key, { value }]) => (value === undefined ? [] : [[key, value]]));
  return {
    value: Object.fromEntries(kept) as unknown,
    clash: fields.some(([, field]) => field.clash),
  };
}
