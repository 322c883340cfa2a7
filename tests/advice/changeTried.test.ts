import { expect, it } from 'vitest';
import { knownBetter } from '../../workers/studies/plan/changeTried';

const shares = [0.75, 0.5, 0.25];

it('a refused plan names the loosest use that would do, and none where the use is known already', () => {
  expect(knownBetter(0.4, shares, (by) => by < 0.25)).toBe(0.2);
  expect(knownBetter(0.4, shares, () => false)).toBeUndefined();
  expect(knownBetter(0, shares, () => true)).toBeUndefined();
});
