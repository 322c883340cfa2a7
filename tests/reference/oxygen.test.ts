import { expect, it } from 'vitest';
import { misses } from './check';
import { oxygenChecks } from './checks/oxygen';

it('dissolves oxygen as printed, and within 0.1 % of handbook and Benson & Krause', () => {
  expect(oxygenChecks()).toHaveLength(2 + 7 + 30 + 1);
  expect(misses(oxygenChecks())).toEqual([]);
});
