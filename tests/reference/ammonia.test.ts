import { expect, it } from 'vitest';
import { misses } from './check';
import { ammoniaChecks } from './checks/ammonia';

it('gives the un-ionised share of ammonia within 0.5 % in 842 waters, per kg of seawater', () => {
  expect(ammoniaChecks()).toHaveLength(842);
  expect(misses(ammoniaChecks())).toEqual([]);
});
