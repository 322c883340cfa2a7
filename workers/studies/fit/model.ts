import type { TankEvent } from '../../../shared/events/event';
import type { Scenario } from '../../../shared/scenario/schema';
import { compile } from '../../engine/compile';
import { settle, type Settled } from '../../engine/settle';
import { LeftRange } from '../../engine/leftRange';
import { Simulation, usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { Happened, Observation } from './asItHappened';
import type { Parameter } from './parameters';

/** What stands where a tank has left the chemistry's range: far from any reading, but finite. */
const LEFT = 0;

/** Runs the tank with given parameters and reads it where the log was read. */
export class Model {
  private readonly read = new Map<string, Float64Array>();
  private settled: Settled | undefined;

  constructor(
    private readonly happened: Happened,
    private readonly parameters: readonly Parameter[],
    private readonly options: SimulationOptions = usualOptions,
  ) {}

  scenarioFor(values: readonly number[]): Scenario {
    return this.parameters.reduce(
      (scenario, { apply }, i) => apply(scenario, values[i]!),
      this.happened.scenario,
    );
  }

  /** What each observation should read, lots' offsets included. */
  readings(values: readonly number[]): Float64Array {
    const { observations } = this.happened;
    const water = this.waterAt(values, observations);
    const offsets = this.parameters.flatMap(({ lot }, i) =>
      lot === undefined ? [] : [[lot, values[i]!] as const],
    );
    const offsetOf = new Map(offsets);
    return water.map((value, i) => {
      const { kind, lot } = observations[i]!;
      return kind === 'alkalinity' ? value + (offsetOf.get(lot) ?? 0) : value;
    });
  }

  /** Alkalinity at given hours, also beyond the log; what is done there comes on top. */
  alkalinityAt(
    values: readonly number[],
    timesH: readonly number[],
    later: readonly TankEvent[],
  ): Float64Array {
    const moments = timesH.map((timeH) => ({ kind: 'alkalinity' as const, timeH }));
    return this.simulate(this.scenarioFor(values), moments, [...this.happened.events, ...later]);
  }

  private waterAt(values: readonly number[], observations: readonly Observation[]): Float64Array {
    const ofTank = values.filter((_, i) => this.parameters[i]!.lot === undefined);
    const key = ofTank.join(' ');
    const known = this.read.get(key);
    if (known) return known;
    const water = this.simulate(this.scenarioFor(values), observations, this.happened.events);
    this.read.set(key, water);
    return water;
  }

  private simulate(
    scenario: Scenario,
    moments: readonly Pick<Observation, 'kind' | 'timeH'>[],
    events: readonly TankEvent[],
  ): Float64Array {
    const water = new Float64Array(moments.length).fill(LEFT);
    const near = this.settled?.settled ? this.settled : undefined;
    this.settled = settle(scenario, this.options, near);
    const { factors } = this.options;
    const plan = compile(scenario, {
      ...this.settled,
      events,
      ...(factors && { factors }),
    });
    const simulation = new Simulation(plan, this.options);
    try {
      moments.forEach(({ kind, timeH }, i) => {
        simulation.advanceTo(timeH);
        water[i] = kind === 'ph' ? simulation.view.phNbs : simulation.view.alkalinityDkh;
      });
    } catch (error) {
      if (!(error instanceof LeftRange)) throw error;
    }
    return water;
  }
}
