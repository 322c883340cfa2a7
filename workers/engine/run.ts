import type { Scenario } from '../../shared/scenario/schema';
import type { Crossing, Trace } from '../../shared/trace/trace';
import { ClosureCheck, type Closures } from './closures';
import { compile } from './compile';
import { CrossingWatch } from './crossings';
import { Recorder } from './recorder';
import { settle } from './settle';
import { Simulation, usualOptions, type SimulationOptions } from './simulation';

/** What a trial gives. */
export interface Run {
  readonly trace: Trace;
  readonly crossings: readonly Crossing[];
  readonly closures: Closures;
  /** False when the plan has no daily cycle to settle on, and started from the room's air. */
  readonly settled: boolean;
}

/** A trial under way: advance it slice by slice, look at what there is, finish. */
export class TrialRun {
  readonly hours: number;
  private readonly simulation: Simulation;
  private readonly recorder: Recorder;
  private readonly watch: CrossingWatch;
  private readonly closure: ClosureCheck;
  private readonly settled: boolean;
  hour = 0;

  constructor(scenario: Scenario, options: SimulationOptions = usualOptions) {
    const { settled, ...settledStart } = settle(scenario, options);
    const plan = compile(
      scenario,
      scenario.start.carbon === 'settledCycle'
        ? settledStart
        : { omegaReference: settledStart.omegaReference },
    );
    this.settled = settled;
    this.hours = Math.floor(scenario.days * 24 + 1e-9);
    this.closure = new ClosureCheck(plan.books);
    this.simulation = new Simulation(plan, options);
    this.recorder = new Recorder(this.simulation, this.hours + 1);
    this.watch = new CrossingWatch(this.simulation);
    this.simulation.onStep = () => this.watch.check();
    this.recorder.record();
  }

  get done(): boolean {
    return this.hour >= this.hours;
  }

  /** Goes on by so many hours, or to the end. */
  advance(hours: number): void {
    const until = Math.min(this.hours, this.hour + hours);
    while (this.hour < until) {
      this.hour++;
      this.simulation.advanceTo(this.hour);
      this.watch.checkJump();
      this.recorder.record();
    }
  }

  result(): Run {
    return {
      trace: this.recorder.finished(),
      crossings: this.watch.found,
      closures: this.closure.measure(),
      settled: this.settled,
    };
  }
}

/** A whole trial: the same scenario gives the same trace, in a worker, in Node, anywhere. */
export function run(scenario: Scenario, options: SimulationOptions = usualOptions): Run {
  const trial = new TrialRun(scenario, options);
  trial.advance(Infinity);
  return trial.result();
}
