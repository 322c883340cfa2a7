import type { Scenario } from '../../../shared/scenario/schema';
import { run, type Run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';

export type RunPlan = (scenario: Scenario) => Run;

/** Runs plans of one tank, each from the water as it stands at the use that the plan has. */
export const runningPlans =
  (standsAt: (useDkhPerDay: number) => TankState, options: SimulationOptions): RunPlan =>
  (scenario) =>
    run(scenario, options, standsAt(scenario.corals.useDkhPerDay));
