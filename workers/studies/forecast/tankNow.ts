import { toDecimals } from '../../../shared/units/digits';
import type { Reading } from '../../../shared/log/reading';
import { withNewestWater } from '../../../shared/log/newest';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { usePerDay } from '../../../shared/verdict/measures';
import { run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { Fit } from '../fit/fit';
import { changedBy, goingOn, type Habits } from './habit';

const bounded = (path: string[], value: number): number => {
  const { min, max } = quantityAt(path).quantity;
  return Math.max(min, Math.min(max, value));
};

/**
 * The tank when the log ends: its newest water, what the corals take there, and the law as the log
 * has it (the saturation that use refers to stays the log's). The first two days of its run take what
 * is said of the use; wherever the water goes from there, use follows the law.
 */
export function tankNow(
  plan: Scenario,
  readings: readonly Reading[],
  { now, scenario, endH }: Fit,
  habits: Habits,
  options: SimulationOptions,
): Scenario {
  const newest = withNewestWater(plan, readings);
  const { growthPercentPerDay, useDkhPerDay } = scenario.corals;
  const grown = useDkhPerDay * Math.exp(((growthPercentPerDay / 100) * endH) / 24);
  const withUse = (use: number): Scenario => ({
    ...scenario,
    ...{ days: plan.days, limits: plan.limits, title: plan.title, additions: [] },
    waterChanges: changedBy(habits, plan.waterChanges),
    start: {
      ...scenario.start,
      carbon: 'settledCycle',
      clockHour: (scenario.start.clockHour + Math.floor(endH)) % 24,
    },
    tank: {
      ...newest.tank,
      alkalinityDkh: bounded(['tank', 'alkalinityDkh'], toDecimals(now.dkh, 2)),
    },
    corals: {
      ...scenario.corals,
      useDkhPerDay: bounded(['corals', 'useDkhPerDay'], toDecimals(use, 4)),
    },
  });
  const taken = (use: number) => {
    const twoDays = goingOn({ ...withUse(use), days: 2 }, habits, Math.floor(endH));
    return usePerDay(run(twoDays, options).trace, 0, 48);
  };
  const wanted = Math.max(0, now.useDkhPerDay);
  // Taken is a straight line in what is typed but for the day's own small answer to it.
  let [a, b] = [0, Math.max(0.05, grown)];
  let [atA, atB] = [taken(a), taken(b)];
  for (let i = 0; i < 2 && Math.abs(atB - wanted) > 1e-3 && atB !== atA; i++) {
    const use = Math.max(0, b + ((wanted - atB) * (b - a)) / (atB - atA));
    [a, atA, b] = [b, atB, use];
    atB = taken(b);
  }
  return withUse(b);
}
