import { describe, expect, it } from 'vitest';

type Entry = string | ((...slots: string[]) => string) | { readonly [key: string]: Entry };

const read = (files: Record<string, unknown>) =>
  new Map(
    Object.entries(files).map(
      ([path, words]) => [path.split('/').at(-2)!, words as Entry] as const,
    ),
  );

const english = read(import.meta.glob('../../shared/words/*/en.ts', { eager: true, import: 'en' }));
const german = read(import.meta.glob('../../shared/words/*/de.ts', { eager: true, import: 'de' }));

/** Entries that take a word which decides the sentence are tried with each of its values by their users. */
const SLOTS = 8;
const slots = Array.from({ length: SLOTS }, (_, i) => `⟦${i}⟧`);

interface Said {
  readonly path: string;
  readonly text: string;
  readonly used: readonly string[];
}

/** Every sentence of a dictionary, its slots filled with marks. */
function said(entry: Entry, path: string): Said[] {
  if (typeof entry === 'string') return [{ path, text: entry, used: [] }];
  if (typeof entry === 'function') {
    const text = entry(...slots);
    return [{ path, text, used: slots.filter((slot) => text.includes(slot)) }];
  }
  return Object.entries(entry).flatMap(([key, inner]) => said(inner, `${path}.${key}`));
}

describe('dictionaries', () => {
  it('are there for every area in both languages', () => {
    expect(english.size).toBeGreaterThan(0);
    expect([...german.keys()]).toEqual([...english.keys()]);
  });

  it.each([...english.keys()])('%s: the same entries, the same slots, nothing empty', (area) => {
    const en = said(english.get(area)!, area);
    const de = said(german.get(area)!, area);
    expect(de.map(({ path }) => path).sort()).toEqual(en.map(({ path }) => path).sort());
    const usedBy = new Map(en.map(({ path, used }) => [path, used]));
    for (const { path, text, used } of de) {
      expect(text.trim(), path).not.toBe('');
      expect(used, path).toEqual(usedBy.get(path));
    }
  });

  it.each([...english.keys()])('%s: no English sentence is left in the German', (area) => {
    const theirs = new Map(said(german.get(area)!, area).map(({ path, text }) => [path, text]));
    const left = said(english.get(area)!, area).filter(
      ({ path, text }) => /[a-z]{2,} [a-z]{2,} [a-z]{2,}/.test(text) && theirs.get(path) === text,
    );
    expect(left).toEqual([]);
  });
});
