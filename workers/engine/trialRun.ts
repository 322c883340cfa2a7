import { noFactors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { BLOCK_SIZE, type Block } from '../../shared/species/block';
import type { LedgerRow } from '../../shared/trace/trace';
import type { Outcome, Stopped } from '../../shared/verdict/outcome';
import { watchedLines, type Line } from '../../shared/verdict/lines';
import { ClosureCheck, type Closures } from './closures';
import { compile } from './compile';
import type { GoneOn } from './goOn';
import { CrossingWatch } from './crossings';
import { lineResult } from './lineResult';
import { Recorder } from './recorder';
import { settle, type Settled } from './settle';
import { LeftRange } from './leftRange';
import { Simulation, usualOptions, type SimulationOptions } from './simulation';
import { simulatedState, type TankState } from './tankState';

/** What a trial gives. */
export interface Run extends Outcome {
  readonly closures: Closures;
  /** What each ledger row has brought to the tank in this run alone. */
  readonly accounts: readonly Account[];
}

/** A ledger row with the mol of every species and the kg of water that it brought (+) or took (−). */
export interface Account {
  readonly row: LedgerRow;
  readonly brought: Block;
}

/** What is looked out for beside the keeper's limits. */
export interface Watched {
  readonly lines: readonly Line[];
  readonly fromH: number;
  /** Called after each step, before anything is switched. */
  readonly onStep?: (simulation: Simulation) => void;
}

/** A trial under way: advance it slice by slice, look at what there is, finish. */
export class TrialRun {
  readonly hours: number;
  private readonly simulation: Simulation;
  private readonly recorder: Recorder;
  private readonly watch: CrossingWatch;
  private readonly closure: ClosureCheck;
  private readonly start: Settled;
  hour = 0;
  private stopped: Stopped | undefined;

  /**
   * `watched` are the lines whose crossings are found, and the moment from which the worst counts;
   * `start` is what it settles on, where somebody has found that already. `goes` is a tank that goes on
   * from where another run left it: to the day on which the scenario ends, counted from the start of
   * the first run; what was planned for the very moment has been done.
   */
  constructor(
    scenario: Scenario,
    options: SimulationOptions = usualOptions,
    private readonly watched: Watched = { lines: watchedLines(scenario), fromH: 0 },
    start?: Settled,
    goes?: GoneOn,
  ) {
    const from = goes?.from;
    this.start = from?.start ?? start ?? settle(scenario, options);
    const plan = goes?.plan ?? planFrom(scenario, this.start, options);
    this.hour = from?.timeH ?? 0;
    this.hours = Math.floor(scenario.days * 24 + 1e-9);
    this.closure = new ClosureCheck(plan.books, from?.closure);
    this.simulation = new Simulation(plan, options, from);
    this.recorder = new Recorder(this.simulation, this.hours - this.hour + 1);
    const fromH = Math.max(watched.fromH, this.hour);
    this.watch = new CrossingWatch(this.simulation, watched.lines, fromH, from?.recent);
    const { onStep } = watched;
    this.simulation.onStep = () => {
      this.watch.check();
      onStep?.(this.simulation);
    };
    this.simulation.onJump = () => this.watch.checkJump();
    this.recorder.record();
  }

  /** The worst of each watched line so far. */
  get worst(): CrossingWatch['worst'] {
    return this.watch.worst;
  }

  get done(): boolean {
    return this.stopped !== undefined || this.hour >= this.hours;
  }

  /** Goes on by so many hours, or to the end. */
  advance(hours: number): void {
    const until = Math.min(this.hours, this.hour + hours);
    while (this.hour < until) {
      this.stopped = this.leavesRangeBefore(this.hour + 1);
      if (this.stopped) return;
      this.hour++;
      this.recorder.record();
    }
  }

  private leavesRangeBefore(hour: number): Stopped | undefined {
    try {
      this.simulation.advanceTo(hour);
      return undefined;
    } catch (error) {
      if (error instanceof LeftRange) return { timeH: error.timeH, why: error.why };
      throw error;
    }
  }

  private lines() {
    const { lines } = this.watched;
    const { worst, found, worstFromH } = this.watch;
    return lines.map((line, i) => lineResult(line, found, worst[i]!, worstFromH, this.hour));
  }

  /**
   * The tank as it stands now, for another run to go on from. Throws a RangeError when it has left
   * the chemistry's range: there is no tank to go on with.
   */
  state(): TankState {
    if (this.stopped) throw new LeftRange(this.stopped.timeH, this.stopped.why);
    const { start, watch, closure } = this;
    return {
      ...simulatedState(this.simulation),
      ...{ start, recent: watch.recent, closure: closure.start },
    };
  }

  private accounts(): Account[] {
    const { books, ledger } = this.simulation.plan;
    return ledger.map((row, i) => ({
      row,
      brought: books.broughtIn.slice(i * BLOCK_SIZE, (i + 1) * BLOCK_SIZE),
    }));
  }

  result(): Run {
    return {
      trace: this.recorder.finished(),
      crossings: this.watch.found,
      lines: this.lines(),
      closures: this.closure.measure(),
      accounts: this.accounts(),
      settled: this.start.settled,
      stopped: this.stopped,
      omegaReference: this.start.omegaReference,
    };
  }
}

function planFrom(scenario: Scenario, start: Settled, options: SimulationOptions) {
  const { pco2Uatm, ...growth } = start;
  return compile(scenario, {
    ...growth,
    factors: options.factors ?? noFactors,
    ...(scenario.start.carbon === 'settledCycle' && { pco2Uatm }),
  });
}
