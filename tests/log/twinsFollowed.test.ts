import { expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { followed } from './twins/followed';

/** As near as a test can tell, dKH. */
const ON_TARGET_DKH = 0.3;
const LEAST_ON_TARGET = 0.9;

/** A keeper's month takes as long as many fits: two of them stand in for the rest in `npm test`. */
const TWINS = 50;
const asked = runsOf(TWINS).numRuns;
const numbers = asked < TWINS ? [9, 10] : Array.from({ length: TWINS }, (_, number) => number);

it(
  'who tests on the days that are asked for and turns what is said stays on the target, nearer than by the last two readings',
  () => {
    const plans = numbers.flatMap((number) => followed(number) ?? []);
    expect(plans.length).toBeGreaterThanOrEqual(numbers.length / 2);
    const share = (of: (plan: (typeof plans)[number]) => number) =>
      plans.filter((plan) => of(plan) <= ON_TARGET_DKH).length / plans.length;
    const kept = share(({ farthestDkh }) => farthestDkh);
    const strays = 2 * Math.sqrt((LEAST_ON_TARGET * (1 - LEAST_ON_TARGET)) / plans.length);
    expect(kept).toBeGreaterThan(LEAST_ON_TARGET - strays);
    expect(kept).toBeGreaterThanOrEqual(share(({ byHandDkh }) => byHandDkh));
    // Nor would it have done to leave the plan alone.
    expect(kept).toBeGreaterThanOrEqual(share(({ leftAloneDkh }) => leftAloneDkh));
  },
  patience * 10,
);
