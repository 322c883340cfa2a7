import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { mergeTanks, rebased } from '../../src/store/mergeTanks';
import {
  openingPlans,
  replacing,
  withoutPlan,
  withPlan,
  type BenchPlans,
} from '../../src/store/plans';
import { withValue } from '../../shared/scenario/change';
import { runningBy } from '../../src/bench/runsBy';
import { newTank, type Tank } from '../../src/store/tanks';
import { patience, runsOf } from '../laws/size';
import { anyReading } from '../log/anyReading';
import { scenarioFromFile } from '../runs/scenarioFiles';

const anyLog = fc.array(anyReading, { maxLength: 6 });
const plans = openingPlans(scenarioFromFile('do-nothing.json'));
const renamed = (name: string) => replacing(plans, plans.plans[1]!.id, { name });
const base = newTank('tank-1', 'lagoon', plans);
const withLog = (tank: Tank, readings: Tank['log']['readings']): Tank => ({
  ...tank,
  log: { ...tank.log, readings },
});
const turned = (bench: BenchPlans, path: readonly string[], value: number): BenchPlans => {
  const { id, scenario } = bench.plans[1]!;
  return replacing(bench, id, { scenario: withValue(scenario, path, value) });
};
const text = (value: unknown) => JSON.stringify(value);

describe('two windows on one tank', () => {
  it(
    'keep every reading that either has entered, and miss what either has taken out',
    () => {
      fc.assert(
        fc.property(anyLog, anyLog, anyLog, (old, mine, theirs) => {
          const begun = withLog(base, old);
          const { tank } = mergeTanks(
            begun,
            withLog(begun, [...old.slice(1), ...mine]),
            withLog(begun, [...old, ...theirs]),
          );
          const found = new Set(tank.log.readings.map(text));
          for (const reading of [...old.slice(1), ...mine, ...theirs]) {
            expect(found.has(text(reading))).toBe(true);
          }
          const gone = old.slice(0, 1).filter((one) => {
            return ![...old.slice(1), ...mine, ...theirs].some(
              (other) => text(other) === text(one),
            );
          });
          for (const reading of gone) expect(found.has(text(reading))).toBe(false);
        }),
        runsOf(1000),
      );
    },
    patience,
  );

  it('take the part that only one of them has changed', () => {
    const mine = { ...base, bench: renamed('mine') };
    const theirs = { ...base, name: 'reef', log: { ...emptyLog, targetDkh: 9 } };
    const { tank, aside } = mergeTanks(base, mine, theirs);
    expect(tank.bench).toEqual(renamed('mine'));
    expect([tank.name, tank.log.targetDkh]).toEqual(['reef', 9]);
    expect(aside).toBeUndefined();
  });

  it('have both of two levers of one trial, and put nothing aside', () => {
    const mine = { ...base, bench: turned(plans, ['tank', 'volumeL'], 500) };
    const theirs = { ...base, bench: turned(plans, ['days'], 11) };
    const { tank, aside } = mergeTanks(base, mine, theirs);
    expect(tank.bench).toEqual(turned(mine.bench, ['days'], 11));
    expect(aside).toBeUndefined();
  });

  it('have both of two trials that were added in the same breath, under names of their own', () => {
    const added = (days: number) => {
      const scenario = { ...plans.plans[0]!.scenario, days };
      return { ...base, bench: withPlan(plans, scenario) };
    };
    const { tank, aside } = mergeTanks(base, added(11), added(21));
    expect(tank.bench.plans.map(({ scenario }) => scenario.days).slice(2)).toEqual([11, 21]);
    for (const own of ['id', 'name', 'ink'] as const) {
      expect(new Set(tank.bench.plans.map((plan) => plan[own])).size).toBe(4);
    }
    expect(aside).toBeUndefined();
  });

  it('have what each has said of the log, setting by setting and supply by supply', () => {
    const salt = { id: 'salt' as const, left: 900, countedAt: '2026-03-01T10:30' };
    const tests = { id: 'tests' as const, left: 12, countedAt: '2026-03-02T10:30' };
    const withSettings = (change: Partial<Tank['log']>) => ({
      ...base,
      log: { ...base.log, ...change },
    });
    const { log } = mergeTanks(
      base,
      withSettings({ targetDkh: 9, supplies: [salt] }),
      withSettings({ scoopG: 4.5, supplies: [tests] }),
    ).tank;
    expect(log).toMatchObject({ targetDkh: 9, scoopG: 4.5 });
    expect(log.supplies).toEqual([salt, tests]);
  });

  it('undo what they have done themselves alone: a lever of the same trial, a setting of the log', () => {
    const step = base;
    const shown = { ...base, bench: turned(plans, ['tank', 'volumeL'], 500) };
    const now = {
      ...shown,
      bench: turned(shown.bench, ['days'], 11),
      log: { ...base.log, targetDkh: 9 },
    };
    const undone = rebased(step, shown, now);
    expect(undone.bench.plans).toEqual(turned(plans, ['days'], 11).plans);
    expect(undone.log.targetDkh).toBe(9);
    // What the other has turned since is no longer one's own.
    const again = { ...shown, bench: turned(shown.bench, ['tank', 'volumeL'], 700) };
    expect(rebased(step, shown, again).bench.plans).toEqual(again.bench.plans);
  });

  it('put the plans of the other window aside when both have changed them', () => {
    const { tank, aside } = mergeTanks(
      base,
      { ...base, bench: renamed('mine') },
      { ...base, bench: renamed('theirs') },
    );
    expect(tank.bench).toEqual(renamed('mine'));
    expect(aside).toEqual(renamed('theirs'));
  });

  it(
    'lose no plan of either, nor what either says it runs by',
    () => {
      const anyEdit = fc.constantFrom('', 'today', 'trial', 'another', 'remove');
      const edited = (bench: BenchPlans, edit: string, days: number): BenchPlans => {
        const trial = bench.plans[1];
        if (!trial) return bench;
        const scenario = { ...trial.scenario, days };
        if (edit === 'today') return runningBy(bench, scenario, '2026-03-04T10:30');
        if (edit === 'trial') return replacing(bench, trial.id, { scenario });
        if (edit === 'another') return withPlan(bench, scenario);
        return edit === 'remove' ? withoutPlan(bench, trial.id) : bench;
      };
      fc.assert(
        fc.property(anyEdit, anyEdit, anyEdit, anyEdit, (a, b, c, d) => {
          const mine = edited(edited(plans, a, 11), b, 12);
          const theirs = edited(edited(plans, c, 21), d, 22);
          const { tank, aside } = mergeTanks(
            base,
            { ...base, bench: mine },
            { ...base, bench: theirs },
          );
          const kept = text([tank.bench, aside]);
          for (const { scenario } of [...mine.plans, ...theirs.plans]) {
            expect(kept).toContain(`"days":${scenario.days},`);
          }
          if (mine.since !== '') expect(tank.bench.plans[0]).toEqual(mine.plans[0]);
          else expect(tank.bench.plans[0]).toEqual(theirs.plans[0]);
          expect(tank.bench.plans.length).toBeGreaterThan(0);
          const ids = tank.bench.plans.map(({ id }) => id);
          expect(new Set(ids).size).toBe(ids.length);
          expect(ids).toContain(tank.bench.selected);
        }),
        runsOf(1000),
      );
    },
    patience,
  );
});
