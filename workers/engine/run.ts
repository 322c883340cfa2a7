import type { Scenario } from '../../shared/scenario/schema';
import { goOn } from './goOn';
import { usualOptions, type SimulationOptions } from './simulation';
import type { TankState } from './tankState';
import { TrialRun, type Run } from './trialRun';

export type { Run };

/** A trial at its end, from its own start or from where another run has left the tank. */
export function ended(
  scenario: Scenario,
  options: SimulationOptions = usualOptions,
  from?: TankState,
): TrialRun {
  const goes = from && goOn(scenario, from, options.factors);
  const trial = new TrialRun(scenario, options, undefined, undefined, goes);
  trial.advance(Infinity);
  return trial;
}

/**
 * A whole trial: the same scenario gives the same trace, in a worker, in Node, anywhere. Given a
 * state, it goes on from there under this plan to the end of the scenario's days, counted from the
 * start of the first run; its trace begins at that moment. Throws a RangeError when they end before.
 */
export const run = (
  scenario: Scenario,
  options: SimulationOptions = usualOptions,
  from?: TankState,
): Run => ended(scenario, options, from).result();

/** The tank as a trial leaves it, for `run` to go on from; a trial of 0 days leaves it as it begins. */
export const stateAfter = (
  scenario: Scenario,
  options: SimulationOptions = usualOptions,
  from?: TankState,
): TankState => ended(scenario, options, from).state();
