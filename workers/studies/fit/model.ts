import type { Scenario } from '../../../shared/scenario/schema';
import { grownBy } from '../../../shared/processes/calcification';
import { isUse } from '../../../shared/trace/trace';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { noFactors } from '../../../shared/scenario/factors';
import { compile } from '../../engine/compile';
import { takenOver } from '../../engine/goOn';
import { simulatedState } from '../../engine/tankState';
import { settle, type Settled } from '../../engine/settle';
import { LeftRange } from '../../engine/leftRange';
import { Simulation, usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { TankEvent } from '../../../shared/events/event';
import type { Happened } from './asItHappened';
import { leapt } from './leap';
import { metalNames, metalsIn, movedBy, noMetals, type Metals } from './metalsMoved';
import type { Parameter } from './parameters';

/** What stands where a tank has left the chemistry's range: far from any reading, but finite. */
const LEFT = 0;
/** Use is what the corals took in the last two days: whole days, so that the hour does not matter. */
const USE_OVER_H = 48;
/** Less than a day takes more by light than by dark. */
const LEAST_USE_H = 24;
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
  /** How calcium and magnesium have moved since each was last read, mg/L. */
  readonly metalsMoved: Metals;
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

  /** What these values come to be by the log's end: grown since its first hour, with corals added or taken out. */
  typedAtEnd(values: readonly number[]): number {
    const scenario = this.scenarioFor(values);
    const { useDkhPerDay, growthPercentPerDay, growthShape } = scenario.corals;
    const relative = ((growthPercentPerDay / 100) * this.happened.endH) / 24;
    const { times } = this.stretches(scenario, values, (one) => one).at(-1)!;
    return useDkhPerDay * times * grownBy(relative, growthShape === 'massive');
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
    const moves = ({ apply, stocking, leap }: Parameter) =>
      [apply, stocking, leap].some((one) => one !== undefined);
    const key = values.filter((_, i) => moves(this.parameters[i]!)).join(' ');
    const known = this.known.get(key);
    if (known) return known;
    const course = this.run(this.scenarioFor(values), values);
    this.known.set(key, course);
    return course;
  }

  /** The run of the log in another tank: what if a typed number were off. */
  run(
    latest: Scenario,
    values: readonly number[],
    other = (scenario: Scenario) => scenario,
  ): Course {
    const { observations, endH } = this.happened;
    const done = { events: this.events(values), factors: this.options.factors ?? noFactors };
    const [{ scenario }, ...later] = this.stretches(latest, values, other);
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
    const { fromH, toH, times } = useOver(later, endH);
    let [before, taken, endDkh] = [0, LEFT, LEFT];
    const { metalsReadH } = this.happened;
    let [read, ends] = [noMetals, noMetals];
    const marks = [
      ...observations.map(({ timeH, kind }, i) => ({
        timeH,
        see: () =>
          (water[i] = kind === 'ph' ? simulation.view.phNbs : simulation.view.alkalinityDkh),
      })),
      ...Array.from({ length: Math.floor(endH / LOOK_H) + 1 }, (_, i) => look(i * LOOK_H)),
      ...metalNames.map((name) => ({
        timeH: metalsReadH[name],
        see: () => (read = { ...read, [name]: metalsIn(simulation.view)[name] }),
      })),
      { timeH: fromH, see: () => (before = takenDkh()) },
      { timeH: toH, see: () => (taken = takenDkh() - before) },
      ...later.map((stretch) => ({
        timeH: stretch.fromH,
        see: () => turnTo(stretch.scenario),
      })),
    ].toSorted((a, b) => a.timeH - b.timeH);
    try {
      for (const { timeH, see } of marks) {
        simulation.advanceTo(timeH);
        see();
      }
      simulation.advanceTo(endH);
      endDkh = simulation.view.alkalinityDkh;
      ends = metalsIn(simulation.view);
    } catch (error) {
      if (!(error instanceof LeftRange)) throw error;
    }
    const useDkhPerDay = endDkh === LEFT ? LEFT : (times * taken * 24) / (toH - fromH);
    const metalsMoved = endDkh === LEFT ? noMetals : movedBy(read, ends);
    return { water, past, endDkh, useDkhPerDay, metalsMoved, settled };
  }

  /** What the log says was done, and what only the readings say. */
  private events(values: readonly number[]): readonly TankEvent[] {
    const { events, leaps, scenario } = this.happened;
    const unnoted = leaps.map((one, index) => {
      const byDkh = values[this.parameters.findIndex(({ leap }) => leap === index)]!;
      return leapt(one, byDkh, scenario.tank.volumeL);
    });
    return [...events, ...unnoted].toSorted((a, b) => a.timeH - b.timeH);
  }

  /** What ran from when on: another dosing after each turn, more or fewer corals after each stocking. */
  private stretches(
    latest: Scenario,
    values: readonly number[],
    other: (scenario: Scenario) => Scenario,
  ): [Stretch, ...Stretch[]] {
    const { earlier, stockings } = this.happened;
    const factors = stockings.map(
      (_, index) => values[this.parameters.findIndex(({ stocking }) => stocking === index)]!,
    );
    const stretch = (fromH: number): Stretch => {
      const dosing = earlier.find(({ untilH }) => untilH > fromH)?.dosing;
      const own = factors.filter((_, index) => stockings[index]!.atH <= fromH);
      const times = own.reduce((product, factor) => product * factor, 1);
      const { corals } = latest;
      const grown = { ...corals, useDkhPerDay: corals.useDkhPerDay * times };
      return { fromH, times, scenario: other({ ...latest, ...dosing, corals: grown }) };
    };
    const starts = [...earlier.map(({ untilH }) => untilH), ...stockings.map(({ atH }) => atH)];
    const later = [...new Set(starts)].toSorted((a, b) => a - b);
    return [stretch(0), ...later.map(stretch)];
  }
}

interface Stretch {
  readonly fromH: number;
  /** What takes alkalinity, against the log's first hour: corals added or taken out. */
  readonly times: number;
  readonly scenario: Scenario;
}

/**
 * Between what the use is measured at the log's end, and by how much it is to be multiplied: two days,
 * before the corals last changed where that was less than a day ago.
 */
function useOver(later: readonly Stretch[], endH: number) {
  const stocked = later.filter(({ times }, i) => times !== (later[i - 1]?.times ?? 1));
  const last = stocked.findLast(({ fromH }) => fromH > endH - USE_OVER_H);
  if (!last) return { fromH: Math.max(0, endH - USE_OVER_H), toH: endH, times: 1 };
  if (endH - last.fromH >= LEAST_USE_H) return { fromH: last.fromH, toH: endH, times: 1 };
  const before = stocked[stocked.indexOf(last) - 1];
  const fromH = Math.max(before?.fromH ?? 0, last.fromH - USE_OVER_H);
  const times = last.times / (before?.times ?? 1);
  // Corals that changed when the log had hardly begun: what little there is tells most.
  return last.fromH - fromH >= LEAST_USE_H
    ? { fromH, toH: last.fromH, times }
    : { fromH: last.fromH < endH ? last.fromH : 0, toH: endH, times: 1 };
}
