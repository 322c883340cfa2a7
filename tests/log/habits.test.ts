import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { twoPart } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { habitsOf } from '../../workers/studies/forecast/habit';
import { handDosed } from '../../workers/studies/forecast/goingOn';
import { replacedAt } from '../../workers/studies/forecast/replacedAt';
import { START_H } from './testedDaily';

const poured = (grams: readonly number[]): Reading[] =>
  grams.map((amount, day) => ({
    at: localTimeOf(START_H + day * 24),
    ...{ additive: 'sodiumBicarbonate' as const, grams: amount },
  }));

const doseOf = (grams: readonly number[]) => {
  const { doses } = habitsOf(poured(grams), localTimeOf(START_H), (grams.length - 1) * 24);
  return doses[0]?.gramsEach;
};

describe('what is poured in by hand', () => {
  it('goes on as it was poured the last three times, where these are alike', () => {
    expect(doseOf([5, 5, 5, 8, 8, 8])).toBe(8);
    expect(doseOf([5, 5, 5, 5])).toBe(5);
  });

  it('else as much a day as all of it was', () => {
    expect(doseOf([5, 10, 5, 10, 5])).toBe(7.5);
    expect(doseOf([5, 5])).toBeUndefined();
  });

  it('is as often as the newest pours were, twice a day too', () => {
    const everyDays = (hours: readonly number[]) => {
      const readings = hours.map((hour) => ({
        at: localTimeOf(START_H + hour),
        ...{ additive: 'sodiumBicarbonate' as const, grams: 5 },
      }));
      const { doses } = habitsOf(readings, localTimeOf(START_H), hours.at(-1)!);
      return doses.map(({ everyDays, gramsEach }) => [everyDays, gramsEach]);
    };
    // Morning and evening are ten and fourteen hours apart, or nine and fifteen.
    expect(everyDays([0, 10, 24, 34, 48])).toEqual([[0.5, 5]]);
    expect(everyDays([0, 15, 24, 39, 48, 63])).toEqual([[0.5, 5]]);
    expect(everyDays([0, 8, 16, 24, 32])).toEqual([[1 / 3, 5]]);
    // One evening was missed, and one day.
    expect(everyDays([0, 12, 24, 48, 60])).toEqual([[0.5, 5]]);
    expect(everyDays([0, 24, 48, 96, 120])).toEqual([[1, 5]]);
    // Poured every second day until it was told to be twice a day.
    expect(everyDays([0, 48, 96, 144, 156, 168])).toEqual([[0.5, 5]]);
    // One correction in three parts is no rhythm of hours.
    expect(everyDays([0, 1, 2])).toEqual([[1, 5]]);
  });

  it('is poured at its own hour of each day to come', () => {
    const now = scenarioOf({ days: 3, start: { clockHour: 10 } });
    const dose = { additive: 'sodiumBicarbonate', gramsEach: 4, everyDays: 1, lastH: -14 } as const;
    // At 20:00 on the evening before, the tank standing at 10:00.
    expect(handDosed(now, { doses: [dose], fromH: 0 }).additions).toEqual(
      [1, 2, 3].map((day) => ({ day, hour: 20, additive: 'sodiumBicarbonate', grams: 4 })),
    );
  });
});

describe('what takes the place of it', () => {
  const bare = scenarioOf({});
  const pair = (ml: number): Scenario => ({
    ...bare,
    dosers: twoPart('sodiumCarbonate', ml, bare),
  });
  const until = '2026-03-01T10:00';

  it('is a plan that is begun', () => {
    expect(replacedAt([{ until, plan: bare }], pair(20))).toBe(until);
    const limewater: Scenario = {
      ...bare,
      topOff: { ...bare.topOff, additive: 'calciumHydroxide', gramsPerL: 1 },
    };
    expect(replacedAt([{ until, plan: pair(20) }], limewater)).toBe(until);
    const later = '2026-03-09T10:00';
    const ran = [
      { until, plan: bare },
      { until: later, plan: pair(20) },
    ];
    expect(replacedAt(ran, pair(25))).toBe(until);
  });

  it('is no pump that is turned', () => {
    expect(replacedAt([{ until, plan: pair(20) }], pair(25))).toBeUndefined();
    expect(replacedAt([], pair(25))).toBeUndefined();
  });
});
