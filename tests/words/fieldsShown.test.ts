import { expect, it } from 'vitest';
import { fieldAt, type FieldPath } from '../../shared/scenario/fields';
import { scenarioOf } from '../../shared/scenario/write';
import { detailGroups } from '../../src/bench/detailGroups';
import { planGroups } from '../../src/bench/planGroups';

/** What has a place of its own: its editor, its sheet, or the hours of an expression. */
const ELSEWHERE = new Set([
  ...['type', 'version', 'title', 'place', 'question', 'answer'],
  ...['dosers', 'additions', 'faults', 'responses'],
]);

/** A list of hours or days comes with a file, the name of a salt with its preset. */
const BY_FILE = ['temperaturePlan', 'room.co2PpmByHour', 'waterChanges.salt.name'];

const leaves = (value: unknown, path: FieldPath): FieldPath[] =>
  typeof value !== 'object' || value === null || Array.isArray(value)
    ? [path]
    : Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]));

it('shows every setting of a scenario in a group of the bench, once', () => {
  const shown = [...planGroups, ...detailGroups].flatMap(({ fields }) =>
    fields.map((path) => path.join('.')),
  );
  const settings = Object.entries(scenarioOf({}))
    .filter(([part]) => !ELSEWHERE.has(part))
    .flatMap(([part, value]) => leaves(value, [part]));
  const hidden = settings.filter((path) => fieldAt(path) && !shown.includes(path.join('.')));
  const unseen = hidden.map((path) => path.join('.'));
  expect(unseen, 'each wants a group of src/bench/detailGroups.ts').toEqual(BY_FILE);
  expect(new Set(shown).size).toBe(shown.length);
  expect(shown.filter((path) => !fieldAt(path.split('.')))).toEqual([]);
});
