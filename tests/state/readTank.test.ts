import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import type { Scenario } from '../../shared/scenario/schema';
import { readEverything } from '../../src/store/everything';
import { openingPlans, withPlan, type BenchPlans } from '../../src/store/plans';
import { readTank } from '../../src/store/readTank';
import { newTank } from '../../src/store/tanks';
import { patience, runsOf } from '../laws/size';
import { spoilt } from '../laws/spoilt';
import { scenarioFromFile } from '../runs/scenarioFiles';

const own = scenarioFromFile('do-nothing.json');
const earlier = scenarioFromFile('limewater-holds.json');
const trial = scenarioFromFile('pico-tank.json');
const readings = [
  { at: '2026-03-01T10:30', alkalinityDkh: 8.4 },
  { at: '2026-03-02T10:30', alkalinityDkh: 8.1 },
];
const bench: BenchPlans = {
  ...withPlan(openingPlans(own), trial),
  since: '2026-03-02T08:00',
  before: [{ since: '', scenario: earlier }],
};
const tank = { ...newTank('tank-7', 'Kelp hall', bench), log: { ...emptyLog, readings } };

/** The same tank with its plans as somebody, or a bad disk, has left them. */
const withPlans = (change: (plans: unknown[]) => unknown[]) => ({
  ...tank,
  bench: { ...bench, plans: change([...bench.plans]) },
});
const volumes = (plans: readonly { scenario: Scenario }[]) =>
  plans.map(({ scenario }) => scenario.tank.volumeL);
const bad = { id: 'x', name: 'x', ink: 0, scenario: { ...own, days: 'many' } };

describe('a tank that was kept', () => {
  it('is read whole', () => {
    expect(readTank(tank)).toEqual({ tank, problems: [] });
  });

  it('under ids and inks that are taken gives each plan its own', () => {
    const { tank: read, problems } = readTank(
      withPlans((plans) => plans.map((plan) => ({ ...(plan as object), id: 'a', ink: 1 }))),
    );
    expect(problems).toEqual([]);
    expect(new Set(read!.bench.plans.map(({ id }) => id)).size).toBe(3);
    expect(new Set(read!.bench.plans.map(({ ink }) => ink)).size).toBe(3);
    expect(volumes(read!.bench.plans)).toEqual(volumes(bench.plans));
  });

  it('with inks that are no numbers draws each plan in its own', () => {
    for (const ink of [false, null, '0', -1, 0.5, 99]) {
      const { tank: read } = readTank(
        withPlans((plans) => plans.map((plan) => ({ ...(plan as object), ink }))),
      );
      expect(read!.bench.plans.map((plan) => plan.ink)).toEqual([0, 1, 2]);
    }
  });

  it('with a trial that cannot be read keeps today’s plan, the other trials and every reading', () => {
    const { tank: read, problems } = readTank(withPlans(([a, , c]) => [a, bad, c]));
    expect(read!.log.readings).toEqual(readings);
    expect(volumes(read!.bench.plans)).toEqual(volumes([bench.plans[0]!, bench.plans[2]!]));
    expect(read!.bench).toMatchObject({ since: bench.since, before: bench.before });
    expect(problems).toEqual([expect.stringMatching(/^x: days .*got "many"; expected a number/)]);
  });

  it('whose plan of today cannot be read does not make a trial what the tank runs by', () => {
    const { tank: read, problems } = readTank(withPlans(([, b, c]) => [bad, b, c]));
    expect(problems).toHaveLength(1);
    expect(read!.bench.plans[0]).toMatchObject({ name: "Today's plan", scenario: earlier });
    expect(read!.bench.since).toBe('');
    expect(read!.bench.plans).toHaveLength(3);
    expect(read!.log.readings).toEqual(readings);
  });

  it('without one plan that can be read still shows its readings', () => {
    for (const plans of [[], [bad], [null, 7, 'x'], {}]) {
      const { tank: read, problems } = readTank({ ...tank, bench: { plans } });
      expect(read!.log.readings).toEqual(readings);
      expect(read!.bench.plans).toHaveLength(1);
      expect(problems.length).toBeGreaterThan(0);
    }
  });

  it('with more plans than a bench holds keeps the first and says so', () => {
    const { tank: read, problems } = readTank(
      withPlans((plans) => Array.from({ length: 900 }, (_, i) => plans[i % 3])),
    );
    expect(read!.bench.plans).toHaveLength(4);
    expect(problems).toEqual([expect.stringContaining('900 plans')]);
  });

  it('with one bad setting or line of the log keeps all others, and names the bad one', () => {
    const counted = { id: 'salt', left: 3000, countedAt: '2026-03-02T10:30' };
    const log = {
      ...{ ...tank.log, targetDkh: '8,2', scoopG: 4.5 },
      readings: [...readings, { at: '2026-03-03T10:30', alkalinityDkh: 810 }, 'x'],
      supplies: [counted, { ...counted, id: 'gold' }],
    };
    const { tank: read, problems } = readTank({ ...tank, log });
    expect(read!.log).toEqual({ ...tank.log, scoopG: 4.5, supplies: [counted] });
    expect(problems).toEqual([
      expect.stringMatching(/^readings\[2\]\.alkalinityDkh .*got 810; expected a number from/),
      expect.stringMatching(/^readings\[3\] .*got "x"/),
      expect.stringMatching(/^supplies\[1\]\.id .*got "gold"/),
      expect.stringMatching(/^targetDkh .*got "8,2"/),
    ]);
  });

  it(
    'with any value anywhere is read as far as it goes, keeps every sound part, and never throws',
    () => {
      const anyPlace = fc.array(fc.nat(40), { minLength: 1, maxLength: 6 });
      const anyValue = fc.oneof(fc.anything(), fc.constantFrom('', 'today', 0, null, [], {}));
      let partly = 0;
      fc.assert(
        fc.property(anyPlace, anyPlace, anyValue, (first, second, value) => {
          const kept = spoilt(spoilt(tank, first, value), second, value);
          const { tank: read, problems } = readTank(kept);
          for (const problem of problems) expect(problem.length).toBeGreaterThan(10);
          if (!read) {
            expect(problems.length).toBeGreaterThan(0);
            return;
          }
          if (problems.length > 0) partly++;
          // What was read is whole, and reads the same again.
          expect(readTank(structuredClone(read))).toEqual({ tank: read, problems: [] });
          const { plans, selected } = read.bench;
          expect(new Set(plans.map(({ id }) => id)).size).toBe(plans.length);
          expect(plans.some(({ id }) => id === selected)).toBe(true);
          const log = (kept as { log?: { readings?: unknown } }).log?.readings;
          for (const reading of readings) {
            const sound = Array.isArray(log) && log.includes(reading);
            if (sound) expect(read.log.readings).toContainEqual(reading);
          }
        }),
        runsOf(5000),
      );
      expect(partly).toBeGreaterThan(0);
    },
    patience,
  );

  it('is none without a plan and a reading, and says why', () => {
    for (const value of [null, 3, 'x', [], {}, { id: 'tank-1' }, { bench: { plans: [bad] } }]) {
      const { tank: read, problems } = readTank(value);
      expect(read).toBeUndefined();
      expect(problems.length).toBeGreaterThan(0);
    }
  });
});

it('a backup with one malformed log is refused with its place, and nothing of it is taken', () => {
  const file = (log: unknown) =>
    readEverything(
      JSON.stringify({
        ...{ type: 'paper-reef/everything', version: 1, preferences: {} },
        tanks: [tank, { ...tank, id: 'b', log }],
      }),
    );
  expect(file(tank.log).ok).toBe(true);
  for (const log of [{ readings: {} }, { readings: [1] }, { ...emptyLog, scoopG: 'x' }, 5, null]) {
    const read = file(log);
    expect(read.ok ? [] : read.problems).toEqual([expect.stringMatching(/^Tank 2: /)]);
  }
});
