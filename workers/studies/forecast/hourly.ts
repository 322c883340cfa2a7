import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { LeftRange } from '../../engine/leftRange';
import { ended } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import type { Earlier } from '../fit/turnedAt';

/**
 * Alkalinity hour by hour, dKH, through what was still dosed at first (whole hours since the start)
 * and by the plan from then on; as far as the water stays in the chemistry's range.
 */
export function hourlyDkh(
  plan: Scenario,
  still: readonly Earlier[],
  options: SimulationOptions,
): number[] {
  const stretches = [
    ...still.map(({ untilH, dosing }) => ({
      ...{ ...plan, ...dosing },
      days: Math.min(plan.days, Math.round(untilH) / 24),
    })),
    plan,
  ];
  const dkh: number[] = [];
  let from: TankState | undefined;
  try {
    for (const stretch of stretches) {
      const trial = ended(stretch, options, from);
      const rows = readColumn(trial.result().trace, 'alkalinity_dkh');
      // The hour of a change is the last of what was and the first of what comes.
      dkh.push(...rows.subarray(from ? 1 : 0));
      if (stretch !== plan) from = trial.state();
    }
  } catch (error) {
    if (!(error instanceof LeftRange)) throw error;
  }
  return dkh;
}
