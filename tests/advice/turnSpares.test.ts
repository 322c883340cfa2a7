import { expect, it } from 'vitest';
import { asked, daily, lime, pumps } from './askedTurn';

it('buys no pump for water that rests as near to the target as a test tells', async () => {
  // As strong as limewater gets: it cannot be turned up.
  const strongest = { ...lime, topOff: { ...lime.topOff, gramsPerL: 1.4, reservoirL: 5 } };
  const { found, told } = await asked(strongest, daily([8.4, 8.3, 8.3, 8.4, 8.3, 8.3, 8.3, 8.3]));
  if (found.kind !== 'turn') throw new Error(told.headline);
  expect(found.turned.lever).toBe('mix');
  expect(told.headline).toMatch(/^(Leave|Mix) the top-off/);
});

it('says how the bottle that brings calcium is left alone, where there is too much of it already', async () => {
  const tests = daily([8.4, 8.3, 8.1, 8, 7.9, 7.7, 7.6, 7.5]);
  const high = tests.map((one, i) => (i === 7 ? { ...one, calciumMgPerL: 470 } : one));
  expect((await asked(pumps, high)).text).toContain(
    'Calcium was read at 470 mg/L, above your 450: untick “Turn the bottles of a pair together”',
  );
  expect((await asked(pumps, tests)).text).not.toContain('untick');
});
