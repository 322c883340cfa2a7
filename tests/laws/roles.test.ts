import { describe, expect, it } from 'vitest';
import { passive, type DeviceKind, type Plant } from '../../shared/devices/device';
import { deviceKinds } from '../../shared/devices/registry';
import { firstFill } from '../../shared/devices/reservoirMix';
import { defineProcess } from '../../shared/processes/process';
import { processes } from '../../shared/processes/registry';
import type { Scenario } from '../../shared/scenario/schema';
import { Reaction } from '../../shared/species/reaction';
import { lastOf, usePerDay } from '../../shared/verdict/measures';
import { limewaterCap } from '../../shared/verdict/limewaterCap';
import { watchedLines } from '../../shared/verdict/lines';
import { compile, type CompileOptions } from '../../workers/engine/compile';
import { CrossingWatch } from '../../workers/engine/crossings';
import { lineResult } from '../../workers/engine/lineResult';
import { Recorder } from '../../workers/engine/recorder';
import { run } from '../../workers/engine/run';
import { Simulation } from '../../workers/engine/simulation';
import { PipeLog } from '../../workers/studies/drill/pipeLog';
import { emptyFrom } from '../../shared/verdict/drillOutcome';
import { seasonQuantities } from '../../workers/studies/season/quantity';
import { sharesOf } from '../../workers/studies/season/share';
import { stateAfter } from '../../workers/engine/run';
import { quietTank } from '../runs/quietTank';

const HOURS = 48;

/** Limewater that drips all day, through as many reservoirs as are asked for. */
const drips = (count: number): DeviceKind => ({
  id: 'drips',
  build: (scenario) =>
    Array.from({ length: count }, (_, i) => ({
      ...passive,
      id: `drip${i}`,
      vessels: [
        {
          ...({ id: `reservoir${i}`, role: 'reservoir' } as const),
          contents: firstFill(scenario).contents.map((amount) => amount / count),
          isMixedAs: () => true,
        },
      ],
      pipes: [
        {
          ...({ id: `drip${i}`, label: 'a drip', role: 'topOff', to: 'tank' } as const),
          from: `reservoir${i}` as const,
          kgPerH: 0.2 / count,
        },
      ],
      act(_view: unknown, plant: Plant) {
        this.pipes[0]!.kgPerH = plant.waterKg(`reservoir${i}`) > 0 ? 0.2 / count : 0;
      },
    })),
});

/** Two days of a tank with other devices or processes. */
function watched(scenario: Scenario, options: CompileOptions) {
  const simulation = new Simulation(compile(scenario, options));
  const recorder = new Recorder(simulation, HOURS + 1);
  const lines = watchedLines(scenario);
  const watch = new CrossingWatch(simulation, lines, 0);
  const pipes = new PipeLog();
  simulation.onStep = () => {
    watch.check();
    pipes.note(simulation);
  };
  recorder.record();
  for (let hour = 1; hour <= HOURS; hour++) {
    simulation.advanceTo(hour);
    recorder.record();
  }
  const { worst, found } = watch;
  const results = lines.map((line, i) => lineResult(line, found, worst[i]!, 0, HOURS));
  return { simulation, trace: recorder.finished(), lines: results, switchings: pipes.switchings };
}

const limewater = quietTank({
  days: 2,
  corals: { useDkhPerDay: 1 },
  evaporation: { litresPerDay: 4 },
  topOff: { additive: 'calciumHydroxide', gramsPerL: 1.2, reservoirL: 9 },
});

describe('a second device of a role', () => {
  const others = deviceKinds.filter(({ id }) => id !== 'topOff');
  const [one, two] = [1, 2].map((count) =>
    watched(limewater, { kinds: [...others, drips(count)] }),
  );

  it('is counted with the first in what was topped off and in what is left of it', () => {
    for (const id of ['topoff_l', 'reservoir_l', 'alkalinity_dkh', 'volume_l'] as const) {
      expect(lastOf(two!.trace, id)).toBeCloseTo(lastOf(one!.trace, id), 9);
    }
    expect(lastOf(two!.trace, 'topoff_l')).toBeGreaterThan(8.9);
  });

  it('is counted with the first in what limewater covers, and not among what else came in', () => {
    const [alone, both] = [one!, two!].map((result) => limewaterCap(limewater, result)!);
    expect(alone!.broughtDkhPerDay).toBeGreaterThan(0.1);
    expect(both!.broughtDkhPerDay).toBeCloseTo(alone!.broughtDkhPerDay, 9);
    expect(both!.othersDkhPerDay).toBeCloseTo(alone!.othersDkhPerDay, 9);
  });

  it('is told when it has run dry', () => {
    expect(emptyFrom(two!, 0)).toBeCloseTo(emptyFrom(one!, 0)!, 6);
    expect(emptyFrom(two!, 0)).toBeGreaterThan(40);
  });
});

describe('a second process of a role', () => {
  const share = (id: string, role: 'growth' | 'chalk', reaction: Reaction) =>
    defineProcess({
      ...({ id, label: id, role, cites: ['commonPractice'] } as const),
      settings: () => ({}),
      reaction: () => reaction,
      rate: () => 1e-3,
    });

  it('that grows is use, and weighed with the skeletons', () => {
    const laid = share('other', 'growth', new Reaction({ Ca: -1, DIC: -1, skeletonCaCO3: 1 }));
    const registry = [...processes, laid];
    const { trace } = watched(quietTank({ days: 2 }), { registry });
    // A mole an hour is two equivalents; 300 L hold 0.10699 eq a dKH.
    expect(usePerDay(trace, 0, 24)).toBeCloseTo((24 * 2e-3) / (300 * 0.35665e-3), 3);
    expect(lastOf(trace, 'skeleton_g')).toBeCloseTo(HOURS * 1e-3 * 100.087, 3);
  });

  it('that makes chalk makes room for more with the first', () => {
    const falls = (id: string) =>
      share(id, 'chalk', new Reaction({ Ca: -1, DIC: -1, precipitateCaCO3: 1 }));
    const registry = [...processes, falls('one'), falls('two')];
    const { view, books } = watched(quietTank({ days: 2 }), { registry }).simulation;
    expect(books.pool('precipitateCaCO3')).toBeCloseTo(2e-3 * HOURS, 9);
    expect(view.precipitateMol).toBeCloseTo(2e-3 * HOURS, 9);
  });
});

it('a calcium reactor is named among what moves calcium', () => {
  const scenario = quietTank({
    days: 10,
    calciumReactor: { dripLPerH: 1, effluentDkh: 30, effluentPhNbs: 6.8 },
  });
  const [calcium] = seasonQuantities;
  const tankOf = (days: number) =>
    stateAfter({ ...scenario, days }).vessels.find(({ id }) => id === 'tank')!.amounts;
  const { trace, accounts } = run(scenario);
  const ends = [0, 240].map(
    (hour) => trace.rows > hour && lastOf({ ...trace, rows: hour + 1 }, 'calcium_mg_l'),
  );
  const shares = sharesOf(
    calcium!,
    [{ before: tankOf(0), after: tankOf(10), accounts }],
    ...(ends as [number, number]),
  );
  expect(shares.map(({ mover }) => mover)).toContain('reactor');
});
