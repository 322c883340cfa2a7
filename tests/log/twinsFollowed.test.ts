import { expect, it } from 'vitest';
import { isFull, patience } from '../laws/size';
import { followed } from './twins/followed';

/** As near as a test can tell, dKH. */
const ON_TARGET_DKH = 0.3;

/** A keeper's month takes as long as many fits: the proof alone follows them. */
const TWINS = 50;

it.runIf(isFull)(
  'who tests on the days that are asked for and turns what is said stays nearer the target than by the last two readings, and than who leaves the plan alone',
  () => {
    const all = Array.from({ length: TWINS }, (_, number) => followed(number) ?? []);
    const plans = all.flat();
    expect(plans.length).toBeGreaterThanOrEqual(TWINS / 2);
    const share = (of: (plan: (typeof plans)[number]) => number) =>
      plans.filter((plan) => of(plan) <= ON_TARGET_DKH).length / plans.length;
    const kept = share(({ farthestDkh }) => farthestDkh);
    expect(kept).toBeGreaterThanOrEqual(share(({ leftAloneDkh }) => leftAloneDkh));
    expect(kept).toBeGreaterThan(share(({ byHandDkh }) => byHandDkh));
  },
  patience * 10,
);
