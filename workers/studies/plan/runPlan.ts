import type { Scenario } from '../../../shared/scenario/schema';
import { run, type Run } from '../../engine/run';
import { TrialRun } from '../../engine/trialRun';
import { settle, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';

export type RunPlan = (scenario: Scenario) => Run;

/** The run-in is a day without what is poured in: plans that differ in that alone share it. */
const runInOf = (scenario: Scenario): string =>
  JSON.stringify({ ...scenario, days: 1, additions: [] });

/**
 * Runs plans of one tank, and settles each kind of day but once; or goes on from the water that
 * another plan has left.
 */
export function runningPlans(options: SimulationOptions, from?: TankState): RunPlan {
  if (from) return (scenario) => run(scenario, options, from);
  const starts = new Map<string, Settled>();
  return (scenario) => {
    const key = runInOf(scenario);
    const start = starts.get(key) ?? settle(scenario, options);
    starts.set(key, start);
    const trial = new TrialRun(scenario, options, undefined, start);
    trial.advance(Infinity);
    return trial.result();
  };
}
