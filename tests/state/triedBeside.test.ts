import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { differences, valueAt } from '../../shared/scenario/change';
import { quantityAt, type FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import { lessonList } from '../../src/lessons/lessonList';
import { drillsOnShelf, plansOnShelf } from '../../src/bench/examples';
import { Bench } from '../../src/bench/bench.svelte';
import { example } from '../../src/store/example';
import type { BenchPlans } from '../../src/store/plans';
import { ranUntil } from '../../src/diary/ranUntil';
import { mergeLogs } from '../../src/store/mergeLogs';
import { rebased } from '../../src/store/mergeTanks';
import { readTank } from '../../src/store/readTank';
import { newTank, type Tank } from '../../src/store/tanks';
import { tankLike } from '../../src/bench/tankLike';
import { TankShelf } from '../../src/shelf/tankShelf.svelte';
import { patience, runsOf } from '../laws/size';
import { freshBrowser } from './browser';

/**
 * Law 10 of what is said to a keeper: nothing of theirs is overwritten by trying. Whatever is
 * opened, dragged, taken, removed or undone, what the real tank runs by changes only by the three
 * acts that say so, and every plan it ran by can be taken back after a reload.
 */
const opened: readonly Scenario[] = [
  ...plansOnShelf.map(({ scenario }) => scenario),
  ...drillsOnShelf.map(({ scenario }) => ({ ...scenario, faults: [], responses: [] })),
  ...lessonList.map(({ scenario }) => scenario),
];
const paths: readonly FieldPath[] = [
  ['tank', 'volumeL'],
  ['corals', 'useDkhPerDay'],
  ['topOff', 'gramsPerL'],
  ['limits', 'alkalinityLowDkh'],
  ['evaporation', 'litresPerDay'],
];

/** What another window has made of a bench is shown on it. */
function follow({ plans }: Bench, made: BenchPlans): void {
  const [shown, now] = [plans.now, made].map((bench) => newTank('', '', bench)) as [Tank, Tank];
  plans.follow(made, (step) => rebased(newTank('', '', step), shown, now).bench);
}

type Act = (bench: Bench, shelf: TankShelf) => void;
interface Step {
  readonly name: string;
  readonly act: Act;
  /** Whether it is one of the acts that change what the tank runs by, or walks back over one. */
  readonly changesToday: boolean;
  /** Whether it may take trials away, because it says so. */
  readonly clearsTrials: boolean;
}

const step = (name: string, act: Act, changesToday = false, clearsTrials = false): Step => ({
  ...{ name, act, changesToday, clearsTrials },
});
/** A value that the field takes, out of forty. */
function valueOf(path: FieldPath, k: number): number {
  const { min, max } = quantityAt(path).quantity;
  return min + ((max - min) * k) / 40;
}
const pick = <T>(list: readonly T[], n: number): T => list[n % list.length]!;

const anyStep: fc.Arbitrary<Step> = fc
  .tuple(fc.nat(99), fc.nat(99), fc.integer({ min: 1, max: 40 }))
  .chain(([n, m, k]) =>
    fc.constantFrom(
      step('open', (bench) => bench.beside.open(pick(opened, n))),
      step('open', (bench) => bench.beside.open(pick(opened, m))),
      step('take from a drill', (bench) => bench.beside.addTrial(pick(opened, n))),
      step('add from a link', (bench) =>
        bench.beside.addTrials(
          [n, m, k].map((i) => ({ name: `sent ${i}`, scenario: pick(opened, i) })),
        ),
      ),
      step('make room', (bench) => bench.beside.makeRoom(pick(bench.plans.all, m).id), false, true),
      step('drag', (bench) => bench.plans.set(pick(paths, n), valueOf(pick(paths, n), k))),
      step('drag', (bench) => bench.plans.set(pick(paths, m), valueOf(pick(paths, m), k))),
      step('set several', (bench) =>
        bench.plans.setSeveral(paths.map((path) => [path, valueOf(path, k)])),
      ),
      step('select', (bench) => bench.plans.select(pick(bench.plans.all, n).id)),
      step('select today', (bench) => bench.plans.select(bench.plans.today.id)),
      step('keep', (bench) => bench.plans.keep()),
      step('rename', (bench) => bench.plans.rename(`name ${n}`)),
      step('remove', (bench) => bench.plans.remove(pick(bench.plans.all, n).id), false, true),
      step('start over', (bench) => bench.beside.startOver(), false, true),
      step('log', (_, { log }) => log.add([{ at: '2026-03-01T10:30', alkalinityDkh: 7 + n / 20 }])),
      step('undo', (bench) => bench.plans.edits.undo(), true, true),
      step('redo', (bench) => bench.plans.edits.redo(), true, true),
      step('my tank runs by this', (bench) => bench.realTank.makeToday(), true),
      step(
        'my tank runs by this from now on',
        (bench) => bench.realTank.runBy(bench.plans.selected.scenario),
        true,
      ),
      step(
        'run by what was before',
        (bench) =>
          bench.plans.now.before.length > 0 &&
          bench.realTank.runBefore(n % bench.plans.now.before.length),
        true,
      ),
      step(
        'it ran so, or never',
        (bench) =>
          bench.plans.now.before.length > 0 &&
          bench.realTank.ranSo(n % bench.plans.now.before.length, k % 2 === 0),
        true,
      ),
      step(
        'describe',
        (bench) =>
          bench.realTank.describe(tankLike({ volumeL: 10 * k, dweller: 'mixed', carrier: 'none' })),
        true,
        true,
      ),
    ),
  );

const runsBy = ({ plans, since, before }: BenchPlans) => ({
  scenario: plans[0]!.scenario,
  since,
  before,
});
const saved = (bench: Bench): BenchPlans => {
  const kept = JSON.parse(JSON.stringify({ id: 'tank-1', name: 'x', bench: bench.plans.now }));
  return readTank(kept).tank!.bench;
};

beforeEach(freshBrowser);

function fresh() {
  const bench = new Bench(example);
  const shelf = new TankShelf(bench);
  return { bench, shelf };
}

describe('what the real tank runs by', () => {
  it(
    'is changed by the acts that say so alone, and every plan of before can be taken back',
    () => {
      const seen = { steps: 0, acts: 0, waiting: 0, beside: 0 };
      fc.assert(
        fc.property(fc.array(anyStep, { minLength: 1, maxLength: 25 }), (steps) => {
          const { bench, shelf } = fresh();
          for (const { act, changesToday, clearsTrials } of steps) {
            const before = bench.plans.now;
            const spare = before.untouched === true && shelf.log.readings.length === 0;
            act(bench, shelf);
            const after = bench.plans.now;
            seen.steps++;
            if (bench.beside.waiting) seen.waiting++;
            if (!changesToday && !spare) expect(runsBy(after)).toEqual(runsBy(before));
            if (changesToday && after !== before) seen.acts++;
            if (!clearsTrials && !spare) {
              const ids = new Set(after.plans.map(({ id }) => id));
              for (const { id } of before.plans) expect(ids.has(id)).toBe(true);
              if (after.plans.length > before.plans.length) seen.beside++;
            }
            expect(after.plans.length).toBeLessThanOrEqual(4);
            expect(new Set(after.plans.map(({ id }) => id)).size).toBe(after.plans.length);
            expect(after.plans.some(({ id }) => id === after.selected)).toBe(true);
          }
          const reloaded = saved(bench);
          expect(reloaded).toEqual(bench.plans.now);
          bench.open(reloaded);
          reloaded.before.forEach(({ scenario }, i) => {
            bench.open(reloaded);
            bench.realTank.runBefore(i);
            expect(differences(scenario, bench.plans.today.scenario)).toEqual([]);
            const old = reloaded.plans[0]!.scenario;
            const known = [...bench.plans.now.before, runsBy(bench.plans.now)].map(
              (ran) => ran.scenario,
            );
            expect(known.some((one) => differences(one, old).length === 0)).toBe(true);
          });
        }),
        runsOf(1000),
      );
      expect(seen.acts).toBeGreaterThan(seen.steps / 50);
      expect(seen.waiting).toBeGreaterThan(0);
      expect(seen.beside).toBeGreaterThan(0);
    },
    patience,
  );
});

describe('a tank with four readings', () => {
  const four = [8.4, 8.1, 8.2, 7.8].map((alkalinityDkh, i) => ({
    at: `2026-03-0${i + 1}T10:30`,
    alkalinityDkh,
  }));
  const raceway = opened.find(({ tank }) => tank.volumeL > 400)!;

  it('keeps its volume and its limits when an example is opened, now and after a reload', async () => {
    const { bench, shelf } = fresh();
    await shelf.restore();
    shelf.log.add(four);
    bench.beside.open(raceway);
    expect(bench.plans.selected.scenario).toBe(raceway);
    expect(bench.plans.today.scenario).toBe(example);
    expect(saved(bench).plans[0]!.scenario).toEqual(example);
  });

  it('says that the bench is full instead of dropping anything, and makes room for what waits', () => {
    const { bench, shelf } = fresh();
    shelf.log.add(four);
    bench.beside.open(raceway);
    bench.plans.keep();
    const full = bench.plans.now;
    let went = false;
    bench.beside.open(opened[0]!, () => (went = true));
    expect(bench.plans.now).toBe(full);
    expect([bench.beside.waiting?.scenario, went]).toEqual([opened[0], false]);
    bench.beside.makeRoom(bench.plans.today.id);
    expect(bench.plans.now).toBe(full);
    bench.beside.makeRoom(full.plans[1]!.id);
    expect([bench.plans.selected.scenario, went]).toEqual([opened[0], true]);
    expect(bench.beside.waiting).toBeUndefined();
    bench.plans.edits.undo();
    expect(bench.plans.now).toBe(full);
  });

  it('is described by a trial and one press, dated; the plan before comes back after a reload', () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date(2026, 2, 4, 10, 30) });
    const { bench, shelf } = fresh();
    bench.plans.set(['tank', 'volumeL'], 500);
    expect(bench.plans.today.scenario.tank.volumeL).toBe(300);
    bench.realTank.makeToday();
    vi.setSystemTime(new Date(2026, 2, 9, 8, 0));
    bench.plans.select(bench.plans.today.id);
    bench.plans.set(['topOff', 'gramsPerL'], 1.3);
    expect(bench.plans.selected.id).not.toBe(bench.plans.today.id);
    expect(bench.plans.today.scenario.topOff.gramsPerL).toBe(0.9);
    bench.realTank.makeToday();
    vi.useRealTimers();
    expect(bench.plans.today.scenario).toMatchObject({
      ...{ title: 'My tank', question: '' },
      topOff: { gramsPerL: 1.3 },
      tank: { volumeL: 500 },
    });
    expect(shelf.current.name).toBe('My tank');
    bench.open(saved(bench));
    expect(bench.plans.now.since).toBe('2026-03-09T08:00');
    expect(bench.plans.now.before.map(({ since }) => since)).toEqual(['', '2026-03-04T10:30']);
    // Volume put right what was typed; another mix is a turn, unless the keeper says otherwise.
    const turns = () =>
      ranUntil(bench.plans.now).map(({ until, plan }) => [until, plan.topOff.gramsPerL]);
    expect(turns()).toEqual([['2026-03-09T08:00', 0.9]]);
    bench.realTank.ranSo(1, false);
    expect(turns()).toEqual([]);
    bench.realTank.ranSo(1, true);
    expect(turns()).toEqual([['2026-03-09T08:00', 0.9]]);
    bench.realTank.runBefore(1);
    expect(valueAt(bench.plans.today.scenario, ['topOff', 'gramsPerL'])).toBe(0.9);
    expect(bench.plans.today.scenario.tank.volumeL).toBe(500);
  });

  it('runs by a plan without the failure that was rehearsed with it; the trial keeps it', () => {
    const { bench } = fresh();
    const drill = drillsOnShelf[0]!.scenario;
    expect(drill.faults.length).toBeGreaterThan(0);
    bench.beside.addTrial(drill);
    bench.realTank.makeToday();
    expect(bench.plans.today.scenario).toMatchObject({
      tank: drill.tank,
      faults: [],
      responses: [],
    });
    expect(bench.plans.selected.scenario).toBe(drill);
  });

  it('keeps the undo of one window when a reading comes in from another', () => {
    const { bench, shelf } = fresh();
    shelf.log.add(four.slice(0, 2));
    bench.plans.set(['topOff', 'gramsPerL'], 1.3);
    const seen = bench.plans.now;
    follow(bench, JSON.parse(JSON.stringify(seen)) as BenchPlans);
    const before = shelf.log.now;
    const log = { ...before, readings: [...four.slice(0, 2), four[3]!] };
    shelf.log.follow(log, (step) => mergeLogs(before, log, step));
    expect([bench.plans.edits.canUndo, shelf.log.edits.canUndo]).toEqual([true, true]);
    bench.plans.edits.undo();
    expect(bench.plans.selected.scenario.topOff.gramsPerL).toBe(0.9);
    shelf.log.edits.undo();
    expect(shelf.log.readings).toEqual([four[3]]);
    shelf.log.edits.redo();
    expect(shelf.log.readings).toEqual([four[0], four[1], four[3]]);
  });

  it('keeps what one window says it runs by and what another tries', () => {
    const [one, two] = [fresh().bench, fresh().bench];
    one.plans.set(['tank', 'volumeL'], 500);
    two.open(one.plans.now);
    one.realTank.makeToday();
    two.plans.set(['topOff', 'gramsPerL'], 1.3);
    follow(two, { ...one.plans.now, plans: [one.plans.all[0]!, ...two.plans.all.slice(1)] });
    expect(two.plans.today.scenario.tank.volumeL).toBe(500);
    two.plans.edits.undo();
    expect(two.plans.today.scenario.tank.volumeL).toBe(500);
    expect(two.plans.now.since).toBe(one.plans.now.since);
    expect(two.plans.selected.scenario.topOff.gramsPerL).toBe(0.9);
  });
});
