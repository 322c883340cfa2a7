import type { Scenario } from '../../../shared/scenario/schema';
import { firstFaultH, type DrillOutcome } from '../../../shared/verdict/drillOutcome';
import { drillLines } from '../../../shared/verdict/lines';
import { TrialRun, type Run } from '../../engine/run';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { lineResult } from './lineResults';
import { PipeLog } from './pipeLog';

/** One rehearsal of a failure: the trial, and how every line fared from the moment it broke. */
export class DrillRun {
  readonly trial: TrialRun;
  private readonly lines;
  private readonly fromH: number;
  private readonly pipes = new PipeLog();

  constructor(scenario: Scenario, options: SimulationOptions = usualOptions) {
    this.lines = drillLines(scenario);
    this.fromH = firstFaultH(scenario);
    this.trial = new TrialRun(scenario, options, {
      lines: this.lines,
      fromH: this.fromH,
      onStep: (simulation) => this.pipes.note(simulation),
    });
  }

  result(): DrillOutcome & Run {
    const outcome = this.trial.result();
    const endH = outcome.trace.rows - 1;
    const { worst } = this.trial;
    return {
      ...outcome,
      lines: this.lines.map((line, i) =>
        lineResult(line, outcome.crossings, worst[i]!, this.fromH, endH),
      ),
      switchings: this.pipes.switchings,
    };
  }
}

/** A whole drill. */
export function runDrill(scenario: Scenario, options: SimulationOptions = usualOptions) {
  const drill = new DrillRun(scenario, options);
  drill.trial.advance(Infinity);
  return drill.result();
}
