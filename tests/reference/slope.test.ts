import { expect, it } from 'vitest';
import { misses } from './check';
import { slopeResolutionChecks } from './checks/slopeResolution';

it('knows a slope as well as the textbook says, and when two tests are far enough apart', () => {
  const checks = slopeResolutionChecks();
  expect(checks.length).toBeGreaterThan(100);
  expect(misses(checks)).toEqual([]);
});
