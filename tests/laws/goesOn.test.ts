import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviceKinds } from '../../shared/devices/registry';
import { eventKinds } from '../../shared/events/registry';
import { processes } from '../../shared/processes/registry';
import { noFactors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { columns } from '../../shared/trace/columns';
import { readColumn, readLedger, type Trace } from '../../shared/trace/trace';
import { compile } from '../../workers/engine/compile';
import { run, stateAfter, type TankState } from '../../workers/engine/index';
import { usualOptions, type SimulationOptions } from '../../workers/engine/simulation';
import { lineOf } from '../../shared/verdict/lineResult';
import { scenarioOf } from '../../shared/scenario/write';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';

/**
 * A look taken anew begins its search for pH elsewhere: rounding. Where a stiff tank holds the steps
 * at the edge of their error, rounding chooses other steps, and these differ within the tolerance:
 * 0.001 in pH is 0.0023 of pCO2, and a quarter of that is allowed (300 draws: 2e-4 at most).
 */
const ROUNDING = 1e-9;
const WITHIN_TOLERANCE = 5e-4;
/**
 * Where corals starve at pH 12, a step's error is thousandths of Ω: such a tank is held ten times
 * tighter. What the choice of steps makes goes with the tolerance, what a state lacks stays.
 */
const tighter = { toleranceUmolPerKg: usualOptions.toleranceUmolPerKg / 10 };
const SELDOM = 0.01;
/** The first row is a look of its own, with constants of the parabola or without: constantsNear.ts. */
const SAME_CONSTANTS = 3e-7;
const MOSTLY = 0.9;

/** What a scenario brings of everything that is registered. */
function partsOf(scenario: Scenario): string[] {
  const { channels } = compile(scenario);
  return [
    ...channels.map(({ id }) => id),
    ...deviceKinds.filter((kind) => kind.build(scenario, noFactors).length > 0).map(({ id }) => id),
    ...eventKinds.filter((kind) => kind.occurrences(scenario).length > 0).map(({ id }) => id),
  ];
}
const registered = [...processes, ...deviceKinds, ...eventKinds].map(({ id }) => id);

const anySplit = fc.record({ scenario: anyScenario, percent: fc.integer({ min: 0, max: 100 }) });

/** A moment that both can stand at. */
const splitAt = ({ days }: Scenario, percent: number): number =>
  Math.round((percent / 100) * Math.floor(days * 24));

/** The column in which rows of the rest of a run are farthest from the whole's, against its size. */
function farthest(rest: Trace, whole: Trace, fromH: number, first = 0, end = Infinity) {
  const pairs: [string, Float64Array, Float64Array][] = [
    ...columns.map(({ id }): [string, Float64Array, Float64Array] => [
      ...([id, readColumn(rest, id), readColumn(whole, id)] as const),
    ]),
    ...whole.ledger.map(({ id }): [string, Float64Array, Float64Array] => [
      ...([id, readLedger(rest, id), readLedger(whole, id)] as const),
    ]),
  ];
  const offs = pairs.map(([column, own, all]) => {
    const size = all.reduce((most, value) => Math.max(most, Math.abs(value)), 1);
    const most = own.reduce(
      (m, value, i) => (i < first || i >= end ? m : Math.max(m, Math.abs(value - all[fromH + i]!))),
      0,
    );
    return { column, off: most / size };
  });
  return offs.reduce((worst, one) => (one.off <= worst.off ? worst : one));
}

/** How far the rest of a run that is taken up at an hour is from the run in one go, its first row left out. */
function offAfter(scenario: Scenario, hour: number, options: SimulationOptions) {
  const whole = run(scenario, options);
  const before = stateAfter({ ...scenario, days: hour / 24 }, options);
  return farthest(run(scenario, options, before).trace, whole.trace, hour, 1);
}

describe('a run that goes on from a state', () => {
  it(
    'under the same plan is the run in one go, whatever is in it',
    () => {
      const seen = new Set<string>();
      let [runs, exact, tightened] = [0, 0, 0];
      fc.assert(
        fc.property(anySplit, ({ scenario, percent }) => {
          const whole = run(scenario);
          const hour = splitAt(scenario, percent);
          if (whole.stopped && whole.stopped.timeH <= hour) return;
          const rest = run(scenario, usualOptions, stateAfter({ ...scenario, days: hour / 24 }));
          expect(rest.trace.rows).toBe(whole.trace.rows - hour);
          expect(farthest(rest.trace, whole.trace, hour, 0, 1).off).toBeLessThan(SAME_CONSTANTS);
          const usual = farthest(rest.trace, whole.trace, hour, 1);
          const isStiff = usual.off >= WITHIN_TOLERANCE;
          const worst = isStiff ? offAfter(scenario, hour, tighter) : usual;
          expect(worst.off, worst.column).toBeLessThan(WITHIN_TOLERANCE);
          runs++;
          tightened += Number(isStiff);
          exact += Number(usual.off < ROUNDING);
          for (const part of partsOf(scenario)) seen.add(part);
        }),
        runsOf(400),
      );
      expect(exact / runs).toBeGreaterThan(MOSTLY);
      expect(tightened).toBeLessThanOrEqual(Math.max(1, SELDOM * runs));
      expect([...seen].toSorted()).toEqual(registered.toSorted());
    },
    patience,
  );

  it('through all of a month', () => {
    for (const file of ['limewater-holds', 'beyond-limewater', 'water-changes-high-salt']) {
      const plan = { ...scenarioFromFile(`${file}.json`), days: 30 };
      const whole = run(plan);
      const rest = run(plan, usualOptions, stateAfter({ ...plan, days: 12 }));
      expect(farthest(rest.trace, whole.trace, 12 * 24).off, file).toBeLessThan(ROUNDING);
    }
  });

  it('lets limewater age at the moments of the run in one go', () => {
    const plan = scenarioOf({
      days: 0.5,
      topOff: { additive: 'calciumHydroxide', gramsPerL: 1.4, lossPercentPerDay: 20 },
      faults: [{ kind: 'siphon', day: 1, hour: 1, endsAfterH: 11, litresPerH: 1 }],
    });
    const whole = run(plan);
    for (const hour of [4, 6, 7, 11]) {
      const rest = run(plan, usualOptions, stateAfter({ ...plan, days: hour / 24 }));
      const { column, off } = farthest(rest.trace, whole.trace, hour);
      expect(off, `${column} from hour ${hour}`).toBeLessThan(ROUNDING);
    }
  });

  it('minds what moved in the day before it', () => {
    const plan = scenarioOf({
      days: 2,
      additions: [{ day: 1, hour: 12, additive: 'sodiumBicarbonate', grams: 30 }],
    });
    const before = stateAfter({ ...plan, days: 1 });
    const again = { ...plan, additions: [{ ...plan.additions[0]!, day: 2, hour: 8 }] };
    const moved = (from?: TankState) =>
      lineOf(run(again, usualOptions, from).lines, 'alkalinityChange').worst;
    expect(moved(before)).toBeGreaterThan(1.5 * moved());
  });

  it(
    'under any other plan keeps every element and books every change',
    () => {
      fc.assert(
        fc.property(anySplit, anyScenario, ({ scenario, percent }, other) => {
          const hour = splitAt(scenario, percent);
          const first = { ...scenario, days: hour / 24 };
          if (run(first).stopped) return;
          const { trace, closures } = run(
            { ...other, days: hour / 24 + other.days },
            usualOptions,
            stateAfter(first),
          );
          expect(new Float64Array(trace.buffer).every(Number.isFinite)).toBe(true);
          expect(closures.alkalinityUmolPerKg).toBeLessThan(1e-3);
          for (const off of Object.values(closures.elements)) expect(off).toBeLessThan(1e-12);
        }),
        runsOf(400),
      );
    },
    patience,
  );
});
