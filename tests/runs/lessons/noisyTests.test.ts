import { expect, it } from 'vitest';
import { lineThrough, testsOf, TEST_SIGMA_DKH } from '../../../src/lessons/noisyTests';
import { readTable } from '../../reference/table';
import { createTrace } from '../../../shared/trace/trace';
import { readColumn } from '../../../shared/trace/trace';

/** An alkalinity that does not move, for so many days. */
function flat(days: number) {
  const trace = { ...createTrace(days * 24 + 1, []), rows: days * 24 + 1 };
  readColumn(trace, 'alkalinity_dkh').fill(8);
  return trace;
}

// slope_resolution.csv: computed from u = σ/√Σ(t − t̄)² for evenly spaced tests.
it('doubts a slope as the reference table says', () => {
  const rows = readTable('slope_resolution.csv').filter(
    (row) => row.number('sigma_test_dKH') === TEST_SIGMA_DKH && row.number('tests_per_day') === 1,
  );
  expect(rows.length).toBeGreaterThan(2);
  for (const row of rows) {
    const tests = Array.from({ length: row.number('n') }, (_, day) => ({ day, dkh: 8 }));
    expect(lineThrough(tests).doubtPerDay).toBeCloseTo(row.number('u_slope_dKH_per_d'), 4);
  }
});

it('fits a straight line exactly', () => {
  const tests = [0, 1, 2, 5].map((day) => ({ day, dkh: 9 - 0.25 * day }));
  const { slopePerDay, atDay0 } = lineThrough(tests);
  expect(slopePerDay).toBeCloseTo(-0.25, 12);
  expect(atDay0).toBeCloseTo(9, 12);
});

it('scatters tests by what it says, without leaning to a side', () => {
  const off = Array.from({ length: 40 }, (_, seed) => testsOf(flat(50), seed))
    .flat()
    .map(({ dkh }) => dkh - 8);
  const mean = off.reduce((a, b) => a + b, 0) / off.length;
  const sigma = Math.sqrt(off.reduce((sum, x) => sum + (x - mean) ** 2, 0) / off.length);
  expect(off.length).toBe(40 * 51);
  // Four standard errors of the mean, and of the scatter.
  expect(Math.abs(mean)).toBeLessThan((4 * TEST_SIGMA_DKH) / Math.sqrt(off.length));
  expect(Math.abs(sigma / TEST_SIGMA_DKH - 1)).toBeLessThan(4 / Math.sqrt(2 * off.length));
});
