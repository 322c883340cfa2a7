import { expect, it } from 'vitest';

const read = (files: Record<string, unknown>) =>
  new Map(Object.entries(files).map(([path, words]) => [path.split('/').at(-2)!, words]));

const english = read(
  import.meta.glob('../../shared/words/lesson*/en.ts', { eager: true, import: 'en' }),
);
const german = read(
  import.meta.glob('../../shared/words/lesson*/de.ts', { eager: true, import: 'de' }),
);

/** Every text of a dictionary by its path, with the numbers that it asks for. */
function asked(entry: unknown, path = ''): [string, string[]][] {
  if (typeof entry === 'string') return [[path, (entry.match(/\{[^}]+\}/g) ?? []).sort()]];
  if (typeof entry === 'function') return [];
  return Object.entries(entry as object).flatMap(([key, inner]) => asked(inner, `${path}.${key}`));
}

it.each([...english.keys()])('%s: each text states the same numbers in both languages', (area) => {
  expect(Object.fromEntries(asked(german.get(area)))).toEqual(
    Object.fromEntries(asked(english.get(area))),
  );
});
