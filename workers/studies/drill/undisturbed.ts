import type { Scenario } from '../../../shared/scenario/schema';
import { firstFaultH } from '../../../shared/verdict/drillOutcome';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { watchedLines } from '../../../shared/verdict/lines';
import { TrialRun } from '../../engine/trialRun';
import type { Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';

/** How a plan's lines fare with nothing failing and nobody answering, from the drill's moment on. */
export function undisturbedLines(
  scenario: Scenario,
  options: SimulationOptions,
  start: Settled,
): readonly LineResult[] {
  const watched = { lines: watchedLines(scenario), fromH: firstFaultH(scenario) };
  const trial = new TrialRun({ ...scenario, faults: [], responses: [] }, options, watched, start);
  trial.advance(Infinity);
  return trial.result().lines;
}
