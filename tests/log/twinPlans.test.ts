import { median } from 'd3-array';
import { expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { plansOf } from './twins/plans';

/** Grams within this of what holds the target, in the middle of all twins. */
const GRAMS_OFF = 0.07;

it(
  'plans made from a log, replayed in the true water, keep the daily limit, and weigh about what holds the target',
  () => {
    const found = Array.from({ length: runsOf(80).numRuns }, (_, number) => plansOf(number)!);
    const plans = found.flatMap((one) => one.plans);
    expect(plans.length).toBeGreaterThan(found.length / 2);
    for (const plan of plans) {
      expect(plan.largestMoveDkh).toBeLessThanOrEqual(plan.allowedDkhPerDay);
    }
    const powders = plans.filter(({ id }) => id !== 'waterChanges');
    expect(median(powders, ({ gramsOff }) => Math.abs(gramsOff))!).toBeLessThan(GRAMS_OFF);
  },
  patience * 10,
);
