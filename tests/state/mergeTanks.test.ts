import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { mergeTanks } from '../../src/store/mergeTanks';
import {
  openingPlans,
  replacing,
  withoutPlan,
  withPlan,
  type BenchPlans,
} from '../../src/store/plans';
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
