import { expect, it } from 'vitest';
import { misses } from './check';
import { recipeChecks } from './checks/recipes';

it('weighs in what the table of additives says', () => {
  const checks = recipeChecks();
  expect(checks.length).toBeGreaterThan(15);
  expect(misses(checks)).toEqual([]);
});
