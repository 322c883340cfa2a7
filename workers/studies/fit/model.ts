import type { TankEvent } from '../../../shared/events/event';
import { grownBy } from '../../../shared/processes/calcification';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Settled } from '../../engine/settle';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { Happened } from './asItHappened';
import { courseOf, type Course } from './course';
import { leapt } from './leap';
import type { Parameter } from './parameters';
import type { Stretch } from './useOver';

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
    const course = courseOf(
      {
        happened: this.happened,
        events: this.events(values),
        stretches: this.stretches(latest, values, other),
        near: this.settled?.settled ? this.settled : undefined,
      },
      this.options,
    );
    this.settled = course.settled;
    return course;
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
