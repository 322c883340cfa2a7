import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { LeftRange } from '../../engine/leftRange';
import { ended, stateAfter } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import type { Earlier } from '../fit/turnedAt';

/**
 * A tank as it begins, but with half of what its level switch lets evaporate already gone: nobody
 * knows whether a test came before or after a gulp of the top-off, and a tank that begins full would
 * stand half a gulp too low from the first one on.
 */
function betweenGulps(plan: Scenario, options: SimulationOptions): TankState {
  const { topOff, tank } = plan;
  const full = stateAfter({ ...plan, days: 0 }, options);
  const isHalf = topOff.reservoirL > 0 && topOff.deadBandL < tank.volumeL;
  const share = isHalf ? 1 - topOff.deadBandL / 2 / tank.volumeL : 1;
  const vessels = full.vessels.map((vessel) =>
    vessel.id === 'tank'
      ? { ...vessel, amounts: vessel.amounts.map((amount) => amount * share) }
      : vessel,
  );
  return { ...full, vessels };
}

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
  try {
    let from = betweenGulps(stretches[0]!, options);
    for (const stretch of stretches) {
      const trial = ended(stretch, options, from);
      const rows = readColumn(trial.result().trace, 'alkalinity_dkh');
      // The hour of a change is the last of what was and the first of what comes.
      dkh.push(...rows.subarray(dkh.length > 0 ? 1 : 0));
      if (stretch !== plan) from = trial.state();
    }
  } catch (error) {
    if (!(error instanceof LeftRange)) throw error;
  }
  return dkh;
}
