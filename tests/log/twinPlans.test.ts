import { mean, median } from 'd3-array';
import { expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { plansFromTruth, plansOf } from './twins/plans';

/** Grams within this of what holds the target, in the middle of all twins. */
const GRAMS_OFF = 0.07;

/** The plan's odds may fall short of the best dose's by so much. */
const BEST_WITHIN = 0.04;

/** As near as a test can tell, dKH. */
const ON_TARGET_DKH = 0.3;

it(
  'plans made from the tank as it truly is stay on the target from the first week to the fourth',
  () => {
    const plans = Array.from({ length: runsOf(60).numRuns }, (_, number) =>
      plansFromTruth(number),
    ).flat();
    expect(plans.length).toBeGreaterThan(3);
    expect(plans.filter(({ farthestDkh }) => farthestDkh > ON_TARGET_DKH)).toEqual([]);
  },
  patience * 10,
);

it(
  'plans made from a log, replayed in the true water, keep the daily limit, and weigh about what holds the target',
  () => {
    const found = Array.from({ length: runsOf(80).numRuns }, (_, number) => plansOf(number)!);
    const plans = found.flatMap((one) => one.plans);
    expect(plans.length).toBeGreaterThan(found.length / 2);
    for (const plan of plans) {
      expect(plan.largestMoveDkh).toBeLessThanOrEqual(plan.allowedDkhPerDay);
    }
    // What a log leaves open no dose puts right: the plan's own odds are near the best that any dose has,
    // they are kept, and a line through the readings keeps no more.
    const shareOf = (all: readonly number[]) =>
      all.filter((dkh) => dkh <= ON_TARGET_DKH).length / plans.length;
    const odds = mean(plans, (plan) => plan.odds)!;
    const kept = shareOf(plans.map(({ farthestDkh }) => farthestDkh));
    const byHand = shareOf(plans.map(({ byHandFarthestDkh }) => byHandFarthestDkh));
    const chance = 2 * Math.sqrt((odds * (1 - odds)) / plans.length);
    expect(kept).toBeGreaterThan(odds - chance);
    expect(kept).toBeGreaterThan(byHand - chance);
    expect(odds).toBeGreaterThan(mean(plans, ({ bestOdds }) => bestOdds)! - BEST_WITHIN);
    const powders = plans.filter(({ id }) => id !== 'waterChanges');
    expect(median(powders, ({ gramsOff }) => Math.abs(gramsOff))!).toBeLessThan(GRAMS_OFF);
  },
  patience * 10,
);
