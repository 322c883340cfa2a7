import { fieldAt, pathText, type FieldPath } from './fields';
import type { Scenario } from './schema';

type Tree = { [key: string | number]: Tree } | unknown;

/** The value at a path of a scenario. */
export const valueAt = (scenario: Scenario, path: FieldPath): unknown =>
  path.reduce<Tree>((tree, step) => (tree as Record<string | number, Tree>)?.[step], scenario);

/** A scenario with one value changed; everything else is shared with the old one. */
export function withValue(scenario: Scenario, path: FieldPath, value: unknown): Scenario {
  const put = (tree: Tree, [step, ...rest]: FieldPath): Tree => {
    if (step === undefined) return value;
    const copy = Array.isArray(tree) ? [...(tree as unknown[])] : { ...(tree as object) };
    const branch = copy as Record<string | number, Tree>;
    branch[step] = put(branch[step], rest);
    return copy;
  };
  return put(scenario, path) as Scenario;
}

/** One setting in which two plans differ. */
export interface Difference {
  readonly at: FieldPath;
  readonly path: string;
  readonly title: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** Words about a scenario are not settings of the tank. */
const NOT_SETTINGS = new Set(['title', 'place', 'question', 'answer', 'type', 'version']);

const isBranch = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** "Water changes: Every", "Dosing pumps 2: Dose". */
export function settingTitle(path: FieldPath): string {
  const part = fieldAt(path.slice(0, 1))?.title ?? '';
  const number = typeof path[1] === 'number' ? ` ${path[1] + 1}` : '';
  const own = typeof path.at(-1) === 'number' || path.length === 1 ? '' : fieldAt(path)?.title;
  return own ? `${part}${number}: ${own}` : `${part}${number}`;
}

function collect(before: unknown, after: unknown, path: FieldPath, into: Difference[]): void {
  if (before === after) return;
  if (isBranch(before) && isBranch(after)) {
    const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
    for (const key of keys) {
      if (path.length === 0 && NOT_SETTINGS.has(key)) continue;
      const step = Array.isArray(before) || Array.isArray(after) ? Number(key) : key;
      const of = (tree: object) => (tree as Record<string, unknown>)[key];
      collect(of(before), of(after), [...path, step], into);
    }
    return;
  }
  into.push({ at: path, path: pathText(path), title: settingTitle(path), before, after });
}

/** Every setting that differs between two plans. */
export function differences(before: Scenario, after: Scenario): Difference[] {
  const found: Difference[] = [];
  collect(before, after, [], found);
  return found;
}
