import { describe, expect, it } from 'vitest';
import { parseScenarioText } from '../../shared/scenario/parse';
import { sentence } from '../../shared/scenario/sentence';
import { readEverything } from '../../src/store/everything';

const head =
  '"type":"paper-reef/scenario","version":2,"title":"x","days":3,"tank":{"volumeL":100,"alkalinityDkh":8}';
const withField = (field: string) => `{${head},${field}}`;
const list = (item: string, count: number) => `[${Array(count).fill(item).join(',')}]`;
const nested = (levels: number) => '['.repeat(levels) + ']'.repeat(levels);

function complaints(text: string): string[] {
  const parsed = parseScenarioText(text);
  return parsed.ok ? [] : parsed.problems.map(sentence);
}

/** Milliseconds on any machine the tests run on; the worst of these took 5,300 before. */
const SOON_MS = 1000;

describe('a hard file', () => {
  it('opens with a byte order mark before it, as some programs write', () => {
    expect(complaints(`\uFEFF{${head}}`)).toEqual([]);
    const backup = { type: 'paper-reef/everything', version: 9, tanks: [1] };
    const read = readEverything(`\uFEFF${JSON.stringify(backup)}`);
    expect(read.ok ? [] : read.problems).toEqual([expect.stringContaining('version 9')]);
  });

  it('shows letters that leave no mark by their numbers', () => {
    const [complaint] = complaints(`\u200B{${head}}`);
    expect(complaint).toContain('U+200B');
    expect(complaint).not.toContain('\u200B');
    expect(complaints(withField('"a\\u0007b":1'))[0]).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });

  it.each([30, 5_000, 400_000])('that nests %i levels deep is told so, whatever the depth', (n) => {
    const found = complaints(withField(`"dosers":${nested(n)}`));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/nested deeper; expected at most 24 levels/);
    expect(found[0]).not.toContain('NaN');
  });

  it.each([
    ['dosers', '{}', 300_000],
    ['dosers', '1', 450_000],
    ['additions', '{"a":1}', 120_000],
    ['faults', '[]', 300_000],
  ])('with a list of %s far too long is refused soon, and says which', (name, item, count) => {
    const began = performance.now();
    const found = complaints(withField(`"${name}":${list(item, count)}`));
    expect(performance.now() - began).toBeLessThan(SOON_MS);
    expect(found).toEqual([
      expect.stringMatching(`^${name} .*got ${count} items; expected at most`),
    ]);
  });

  it('of junk in lists of lists is refused soon, with no more reasons than are read', () => {
    const began = performance.now();
    const found = complaints(withField(`"dosers":${list(`{"recipe":${list('{}', 190)}}`, 190)}`));
    expect(performance.now() - began).toBeLessThan(SOON_MS);
    expect(found.length).toBeGreaterThan(10);
    expect(found.length).toBeLessThanOrEqual(50);
  });
});
