import { say } from '../words/problems';
import { fieldAt, pathText, type FieldPath } from './fields';
import type { Problem } from './problem';

/** As long as the longest list of the schema: what is longer is refused before its items are looked at. */
const LONGEST_LIST = 200;

/** Each list that is longer than any plan needs, with its place. */
export function longLists(value: unknown, path: FieldPath = []): Problem[] {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value) && value.length > LONGEST_LIST) {
    const { items, atMost, tooMany } = say.file;
    return [
      {
        path: pathText(path),
        what: fieldAt(path)?.title ?? say.field.unknown,
        got: items(String(value.length)),
        expected: atMost(String(LONGEST_LIST)),
        wayOut: tooMany,
      },
    ];
  }
  return Object.entries(value).flatMap(([key, inner]) =>
    longLists(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}
