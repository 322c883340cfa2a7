import type { Chance } from './chance';

type Tree = Record<string | number, unknown>;
const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/** Every place of a tree, as the keys that lead there. */
export function placesIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (!isTree(value)) return [path];
  const below = Object.keys(value).flatMap((key) => placesIn(value[key], [...path, key]));
  return path.length === 0 ? below : [path, ...below];
}

export const at = (tree: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((value, key) => (isTree(value) ? value[key] : undefined), tree);

const deep = (levels: number): unknown => {
  let value: unknown = 'bottom';
  for (let i = 0; i < levels; i++) value = i % 2 ? [value] : { in: value };
  return value;
};

const spoils: readonly ((old: unknown, chance: Chance) => unknown)[] = [
  () => null,
  () => 'soon',
  () => '',
  () => NaN,
  () => Infinity,
  () => -1,
  () => 1e308,
  () => 0,
  () => true,
  () => [],
  () => ({}),
  () => deep(200),
  (_, chance) => 'x'.repeat(chance.int(100, 200_000)),
  () => JSON.parse('{"__proto__": {"at": 1}, "constructor": 1}') as unknown,
  (old) => [old, old],
  (old) => (Array.isArray(old) ? Array.from({ length: 3000 }, () => old[0] as unknown) : [old]),
  (old) => (typeof old === 'number' ? String(old) : String(old).slice(0, 3)),
  (old) => (typeof old === 'number' ? old * 1.01 : old),
];

/** A record with one to three places of it spoilt, and which. */
export function mutant(record: unknown, chance: Chance): readonly [unknown, string] {
  const spoilt = structuredClone(record) as Tree;
  const said: string[] = [];
  for (let i = chance.int(1, 3); i > 0; i--) {
    const place = chance.pick(placesIn(spoilt));
    const parent = at(spoilt, place.slice(0, -1)) as Tree;
    const key = place.at(-1)!;
    if (chance.percent(20)) {
      delete parent[key];
      said.push(`${place.join('.')} gone`);
      continue;
    }
    const value = chance.pick(spoils)(parent[key], chance);
    parent[key] = value;
    said.push(`${place.join('.')}: ${String(JSON.stringify(value)).slice(0, 40)}`);
  }
  return [spoilt, said.join('; ')];
}
