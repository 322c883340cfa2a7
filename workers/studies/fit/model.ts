import type { Scenario } from '../../../shared/scenario/schema';
import { isUse } from '../../../shared/trace/trace';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { noFactors } from '../../../shared/scenario/factors';
import { compile } from '../../engine/compile';
import { takenOver } from '../../engine/goOn';
import { simulatedState } from '../../engine/tankState';
import { settle, type Settled } from '../../engine/settle';
import { LeftRange } from '../../engine/leftRange';
import { Simulation, usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { Happened } from './asItHappened';
import type { Parameter } from './parameters';

/** What stands where a tank has left the chemistry's range: far from any reading, but finite. */
const LEFT = 0;
/** Use is what the corals took in the last two days: whole days, so that the hour does not matter. */
const USE_OVER_H = 48;
const LOOK_H = 3;

/** The run of a log with given parameters. */
export interface Course {
  /** What each observation should read, offsets of probe and lots left out. */
  readonly water: readonly number[];
  /** Alkalinity every few hours of the log. */
  readonly past: readonly { readonly timeH: number; readonly dkh: number }[];
  /** Alkalinity when the log ends. */
  readonly endDkh: number;
  /** What the corals took at the end, by the engine's own ledger. */
  readonly useDkhPerDay: number;
  readonly settled: Settled;
}

/** Runs the tank with given parameters and reads it where the log was read. */
export class Model {
  private readonly known = new Map<string, Course>();
  private settled: Settled | undefined;

  constructor(
    readonly happened: Happened,
    readonly parameters: readonly Parameter[],
    private readonly options: SimulationOptions = usualOptions,
  ) {}

  scenarioFor(values: readonly number[]): Scenario {
    return this.parameters.reduce(
      (scenario, { apply }, i) => apply?.(scenario, values[i]!) ?? scenario,
      this.happened.scenario,
    );
  }

  /** What each observation should read, offsets included. */
  readings(values: readonly number[]): number[] {
    const { observations } = this.happened;
    return this.course(values).water.map((value, k) =>
      this.parameters.reduce(
        (sum, { offsets }, i) => sum + (offsets?.(observations[k]!) ? values[i]! : 0),
        value,
      ),
    );
  }

  course(values: readonly number[]): Course {
    const key = values.filter((_, i) => this.parameters[i]!.apply).join(' ');
    const known = this.known.get(key);
    if (known) return known;
    const course = this.run(this.scenarioFor(values));
    this.known.set(key, course);
    return course;
  }

  /** The run of the log in another tank: what if a typed number were off. */
  run(latest: Scenario, other = (scenario: Scenario) => scenario): Course {
    const { observations, events, endH, earlier } = this.happened;
    const done = { events, factors: this.options.factors ?? noFactors };
    // What was dosed before each turn, and after the last.
    const dosed = [...earlier.map(({ dosing }) => ({ ...latest, ...dosing })), latest].map(other);
    const [scenario] = dosed as [Scenario];
    const near = this.settled?.settled ? this.settled : undefined;
    const settled = settle(scenario, this.options, near);
    this.settled = settled;
    let simulation = new Simulation(compile(scenario, { ...settled, ...done }), this.options);
    const turnTo = (next: Scenario) => {
      const from = { ...simulatedState(simulation), start: settled };
      simulation = new Simulation(takenOver(next, from, done), this.options, from);
    };
    const takenEq = () =>
      simulation.plan.ledger.reduce(
        (sum, { role }, row) => (isUse(role) ? sum - simulation.books.ledgerEq[row]! : sum),
        0,
      );
    const takenDkh = () => (takenEq() * 1000) / meqPerLPerDkh / scenario.tank.volumeL;
    const water = observations.map(() => LEFT);
    const past: { timeH: number; dkh: number }[] = [];
    const look = (timeH: number) => ({
      timeH,
      see: () => past.push({ timeH, dkh: simulation.view.alkalinityDkh }),
    });
    const fromH = Math.max(0, endH - USE_OVER_H);
    let [before, endDkh, useDkhPerDay] = [0, LEFT, LEFT];
    const marks = [
      ...observations.map(({ timeH, kind }, i) => ({
        timeH,
        see: () =>
          (water[i] = kind === 'ph' ? simulation.view.phNbs : simulation.view.alkalinityDkh),
      })),
      ...Array.from({ length: Math.floor(endH / LOOK_H) + 1 }, (_, i) => look(i * LOOK_H)),
      { timeH: fromH, see: () => (before = takenDkh()) },
      ...earlier.map(({ untilH }, i) => ({ timeH: untilH, see: () => turnTo(dosed[i + 1]!) })),
    ].toSorted((a, b) => a.timeH - b.timeH);
    try {
      for (const { timeH, see } of marks) {
        simulation.advanceTo(timeH);
        see();
      }
      simulation.advanceTo(endH);
      endDkh = simulation.view.alkalinityDkh;
      useDkhPerDay = ((takenDkh() - before) * 24) / (endH - fromH);
    } catch (error) {
      if (!(error instanceof LeftRange)) throw error;
    }
    return { water, past, endDkh, useDkhPerDay, settled };
  }
}
