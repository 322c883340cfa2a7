import { toDecimals } from '../../../shared/units/digits';
import type { Reading } from '../../../shared/log/reading';
import { withNewestWater } from '../../../shared/log/newest';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Fit } from '../fit/fit';
import type { Metals } from '../fit/metalsMoved';
import { type Habits } from './habit';
import { changedBy } from './goingOn';

const bounded = (path: string[], value: number): number => {
  const { min, max } = quantityAt(path).quantity;
  return Math.max(min, Math.min(max, value));
};

/**
 * The tank when the log ends: its newest water, calcium and magnesium as they have moved since they
 * were read, and the use and the law as the log has them (the saturation that use refers to stays the
 * log's): where the water goes from there, use follows.
 */
export function tankNow(
  plan: Scenario,
  readings: readonly Reading[],
  { now, scenario, endH }: Fit,
  habits: Habits,
): Scenario {
  const newest = withNewestWater(plan, readings).tank;
  const moved = (name: keyof Metals) =>
    bounded(['tank', name], toDecimals(newest[name] + now.metalsMoved[name], 1));
  return {
    ...scenario,
    ...{ days: plan.days, limits: plan.limits, title: plan.title, additions: [] },
    waterChanges: changedBy(habits, plan.waterChanges),
    start: {
      ...scenario.start,
      carbon: 'settledCycle',
      clockHour: (scenario.start.clockHour + Math.floor(endH)) % 24,
    },
    tank: {
      ...newest,
      ...{ calciumMgPerL: moved('calciumMgPerL'), magnesiumMgPerL: moved('magnesiumMgPerL') },
      alkalinityDkh: bounded(['tank', 'alkalinityDkh'], toDecimals(now.dkh, 2)),
    },
    corals: {
      ...scenario.corals,
      useDkhPerDay: bounded(['corals', 'useDkhPerDay'], toDecimals(now.typedUseDkhPerDay, 4)),
    },
  };
}
