import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { mergeTanks } from '../../src/state/mergeTanks';
import { openingPlans, replacing } from '../../src/state/plans';
import { newTank, type Tank } from '../../src/state/tanks';
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
});
