import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { patience, runsOf } from '../laws/size';
import { misses } from '../reference/check';
import { calciumPerDkhChecks } from './checks/calciumPerDkh';
import { firstDayChecks, firstDayFall } from './checks/firstDay';

const anyConsumer = fc.record({
  useDkhPerDay: fc.double({ min: 0.1, max: 2, noNaN: true }),
  omegaLaw: fc.constantFrom('gentle' as const, 'proportional' as const),
  lightDarkRatio: fc.double({ min: 1, max: 20, noNaN: true }),
  alkalinityDkh: fc.double({ min: 8, max: 11, noNaN: true }),
});

describe('the first day of an undosed tank', () => {
  it(
    'takes the dKH that was typed, in 24 tanks',
    () => {
      expect(firstDayChecks()).toHaveLength(24);
      expect(misses(firstDayChecks())).toEqual([]);
    },
    patience,
  );

  it(
    'takes the dKH that was typed, whatever the law, the light and the alkalinity',
    () => {
      fc.assert(
        fc.property(anyConsumer, (consumer) => {
          const { dkh } = firstDayFall(consumer);
          expect(Math.abs(dkh - consumer.useDkhPerDay)).toBeLessThan(0.02);
        }),
        runsOf(300),
      );
    },
    patience,
  );

  it(
    'takes 7.147 mg/L of calcium with each dKH',
    () => {
      expect(calciumPerDkhChecks()).toHaveLength(3);
      expect(misses(calciumPerDkhChecks())).toEqual([]);
    },
    patience,
  );
});
