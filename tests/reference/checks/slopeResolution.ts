import { daysBetweenTwoTests, straightLine } from '../../../shared/log/slope';
import type { Check } from '../check';
import { readTable } from '../table';

/** Half of the last digit printed. */
const HALF_DIGIT = 5e-5;

/** The table prints one test a week as 0.143 a day. */
const testsPerDay = (printed: number) => (printed === 0.143 ? 1 / 7 : printed);

/** How well n noisy tests resolve a slope, and how far apart two of them must be. */
export function slopeResolutionChecks(): Check[] {
  const origin = {
    source: 'σ/√Σ(t − t̄)² (slope_resolution.csv)',
    howVerified: 'computed',
  } as const;
  const rows = readTable('slope_resolution.csv').map((row, i): Check => {
    const [n, days] = [row.number('n'), row.number('days')];
    const times = Array.from(
      { length: n },
      (_, test) => test / testsPerDay(row.number('tests_per_day')),
    );
    const line = straightLine(
      times,
      times.map(() => 8),
      row.number('sigma_test_dKH'),
    );
    return {
      ...origin,
      id: `slope/${i}/${days} days`,
      quantity: 'standard error of a slope',
      expected: row.number('u_slope_dKH_per_d'),
      got: line.standardErrorDkhPerDay,
      tolerance: HALF_DIGIT,
      unit: 'dKH/day',
    };
  });
  const rule: Check = {
    id: 'slope/two tests',
    quantity: 'days between two tests for 0.1 dKH/day, σ 0.15, k 2',
    source: 'k·σ·√2/e, worked by hand',
    howVerified: 'computed',
    expected: 4.2,
    got: daysBetweenTwoTests(0.1, 0.15, 2),
    tolerance: 0.05,
    unit: 'days',
  };
  return [...rows, rule];
}
