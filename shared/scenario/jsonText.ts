import { say } from '../words/problems';
import { inSight } from './inSight';
import type { Problem } from './problem';

export type JsonRead =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: Problem };

/** No plan, tank or log nests deeper than half of this. */
const DEEPEST = 24;

function isDeeper(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return levels === 0 || Object.values(value).some((inner) => isDeeper(inner, levels - 1));
}

const refuse = (what: string, got: string, expected: string, wayOut: string): JsonRead => ({
  ok: false,
  problem: { path: say.wholeFile, what, got, expected, wayOut },
});

/** The value behind the text of a file, or why it is none; some programs put a byte order mark first. */
export function readJson(text: string, what: string, longest: number): JsonRead {
  if (text.length > longest) {
    const { characters, atMost, tooLong } = say.file;
    return refuse(what, characters(String(text.length)), atMost(String(longest)), tooLong);
  }
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    if (!isDeeper(value, DEEPEST)) return { ok: true, value };
  } catch (error) {
    // JSON.parse of V8 runs out of stack on some thousand levels: that is no mistake of the text.
    if (!(error instanceof RangeError)) {
      return refuse(what, inSight((error as Error).message), say.file.json, say.file.mendJson);
    }
  }
  return refuse(what, say.file.nested, say.file.levels(String(DEEPEST)), say.file.tooDeep);
}
