import type { Scenario } from '../../../shared/scenario/schema';
import { firstFaultH, type DrillOutcome } from '../../../shared/verdict/drillOutcome';
import { watchedLines } from '../../../shared/verdict/lines';
import { TrialRun, type Run } from '../../engine/trialRun';
import { settle, type Settled } from '../../engine/settle';
import { usualOptions, type Simulation, type SimulationOptions } from '../../engine/simulation';
import { PipeLog } from './pipeLog';

/** One rehearsal of a failure: the trial, and how every line fared from the moment it broke. */
export class DrillRun {
  readonly trial: TrialRun;
  private readonly pipes = new PipeLog();

  constructor(
    scenario: Scenario,
    options: SimulationOptions = usualOptions,
    start: Settled = settle(scenario, options),
  ) {
    const watched = {
      lines: watchedLines(scenario),
      fromH: firstFaultH(scenario),
      onStep: (simulation: Simulation) => this.pipes.note(simulation),
    };
    this.trial = new TrialRun(scenario, options, watched, start);
  }

  result(): DrillOutcome & Run {
    return { ...this.trial.result(), switchings: this.pipes.switchings };
  }
}

/** A whole drill; `start` is what its day settles on, where somebody has found that already. */
export function runDrill(
  scenario: Scenario,
  options: SimulationOptions = usualOptions,
  start?: Settled,
) {
  const drill = new DrillRun(scenario, options, start);
  drill.trial.advance(Infinity);
  return drill.result();
}
