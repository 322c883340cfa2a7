import { expect, it } from 'vitest';
import { terms } from '../../src/glossary/terms';

it('every word has one sentence, once, and no water is called by the word we avoid', () => {
  const names = terms.map(({ term }) => term);
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThan(25);
  for (const { sentence } of terms) {
    expect(sentence).toMatch(/^[A-Z][^.]*(\d\.\d[^.]*)*\.$/);
    expect(sentence).not.toMatch(/\bsafe/i);
  }
});
