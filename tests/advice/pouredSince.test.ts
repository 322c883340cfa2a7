import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { twoPart } from '../../shared/recipe/twoPart';
import { targetsWithin } from '../../shared/recipe/seasonTargets';
import { scenarioOf } from '../../shared/scenario/write';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { seasonOptions, seasonTank } from '../../workers/studies/season/ahead';
import { firstAsked } from '../../workers/studies/season/firstAsked';
import { firstDays, type First } from '../../workers/studies/season/firstDays';
import { metals } from '../../workers/studies/season/metals';
import { withPoured } from '../../workers/studies/season/pouredSince';
import { readColumn } from '../../shared/trace/trace';
import { patience, runsOf } from '../laws/size';
import { anySeason, type AnySeason } from './anySeason';

const READ = '2026-09-20T10:00';
const morning = (day: number) => localTimeOf(hoursOf(READ) - 1 + 24 * day);
const options = seasonOptions(usualOptions);

/** What a keeper is told to pour first, by what the log then has. */
function told({ known, giveOrTakeDkhPerDay }: AnySeason, readings: readonly Reading[]): First {
  const targets = targetsWithin(known, { calcium: 0, magnesium: 0 });
  const asked = { targets, mostPerDay: usualMostPerDay };
  const tank = seasonTank({ now: known, readings, giveOrTakeDkhPerDay, ...asked }, options);
  return firstDays(tank, firstAsked(tank, targets, usualMostPerDay));
}

/** Held in alkalinity, and in want of a metal. */
const inWant = anySeason.filter(
  ({ carrier, known: { tank, corals } }) =>
    carrier === 'pair' &&
    corals.useDkhPerDay < 1.5 &&
    Math.min(tank.calciumMgPerL - 400, tank.magnesiumMgPerL - 1250) < 0,
);

/** Soda ash and calcium for 1 dKH a day in 300 L, 40 mg/L of calcium short. */
const bare = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.5, calciumMgPerL: 385 },
  corals: { useDkhPerDay: 1, growthPercentPerDay: 0 },
  evaporation: { litresPerDay: 4 },
});
const known = { ...bare, dosers: twoPart('sodiumCarbonate', 57, bare) };
const plain: AnySeason = {
  ...{ carrier: 'pair', broughtDkhPerDay: 1, truth: known, known, giveOrTakeDkhPerDay: 0.05 },
};

const totalOf = (first: First, metal: 'calcium' | 'magnesium') =>
  first.kind === 'first' ? (first.poured[metal]?.gramsPerDay ?? 0) * first.days : 0;

it(
  'what was poured as it was said is not said again before the next test',
  () => {
    let poured = 0;
    fc.assert(
      fc.property(inWant, (any) => {
        const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = any.known.tank;
        const read = { at: READ, calciumMgPerL, magnesiumMgPerL, salinityPractical };
        const first = told(any, [read]);
        if (first.kind !== 'first' || first.share < 1 || first.change) return;
        const { days } = first;
        const lines = (until: number): Reading[] =>
          Array.from({ length: until }, (_, i) => morning(i + 1)).flatMap((at) =>
            Object.values(first.poured).map(({ additive, gramsPerDay }) => ({
              ...{ at, additive, grams: gramsPerDay },
            })),
          );
        const done = told(any, [read, ...lines(days)]);
        const half = told(any, [read, ...lines(Math.floor(days / 2))]);
        for (const metal of metals) {
          const all = totalOf(first, metal);
          if (all === 0) continue;
          poured++;
          expect(totalOf(done, metal)).toBeLessThan(0.35 * all);
          if (days > 1) expect(totalOf(half, metal)).toBeLessThan(0.85 * all);
        }
      }),
      { ...runsOf(30), examples: [[plain]] },
    );
    expect(poured).toBeGreaterThan(0);
  },
  patience,
);

it('water that was changed since brings what it holds and takes its share, as the engine has it', () => {
  const bare = scenarioOf({
    tank: { volumeL: 300, calciumMgPerL: 380, magnesiumMgPerL: 1450, salinityPractical: 34 },
    waterChanges: { salinityPractical: 35, salt: { calciumMgPerL: 450, magnesiumMgPerL: 1300 } },
    corals: { useDkhPerDay: 0 },
  });
  const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = bare.tank;
  const read: Reading = { at: READ, calciumMgPerL, magnesiumMgPerL, salinityPractical };
  const changed = [1, 8].map((day) => ({ at: morning(day), waterChangePercent: 20 }));
  const { now } = withPoured(bare, [read, ...changed], options);
  const weekly = { ...bare.waterChanges, percent: 20, everyDays: 7 };
  const { trace } = run({ ...bare, days: 15, waterChanges: weekly });
  const ends = (column: 'calcium_mg_l' | 'magnesium_mg_l' | 'salinity_ppt') =>
    readColumn(trace, column).at(-1)!;
  // By hand: 380 + 0.2·70 + 0.2·56 = 405.2; 36 % of the way.
  expect(now.tank.calciumMgPerL).toBeCloseTo(380 + 0.36 * 70, 6);
  expect(Math.abs(now.tank.calciumMgPerL - ends('calcium_mg_l'))).toBeLessThan(1.5);
  expect(Math.abs(now.tank.magnesiumMgPerL - ends('magnesium_mg_l'))).toBeLessThan(4);
  expect(Math.abs(now.tank.salinityPractical - ends('salinity_ppt'))).toBeLessThan(0.05);
});

it('what a tank takes as fast as it is poured in raises nothing', () => {
  const plan = scenarioOf({ corals: { useDkhPerDay: 1 }, evaporation: { litresPerDay: 4 } });
  const course = readColumn(run({ ...plan, days: 30 }).trace, 'calcium_mg_l');
  const fell = course[0]! - course.at(-1)!;
  expect(fell).toBeGreaterThan(20);
  // Calcium chloride dihydrate is 27.3 % calcium by weight.
  const daily = (fell * plan.tank.volumeL) / 272.6 / 30;
  const pours = (grams: number): Reading[] =>
    Array.from({ length: 30 }, (_, i) => ({
      ...{ at: morning(i + 1), additive: 'calciumChlorideDihydrate' as const, grams },
    }));
  const at = (grams: number) =>
    withPoured(
      plan,
      [{ at: READ, calciumMgPerL: plan.tank.calciumMgPerL }, ...pours(grams)],
      options,
    ).now.tank.calciumMgPerL - plan.tank.calciumMgPerL;
  expect(at(daily)).toBeLessThan(2);
  expect(at(2 * daily)).toBeGreaterThan(0.9 * fell);
  expect(at(2 * daily)).toBeLessThan(1.1 * fell);
  expect(at(0)).toBe(0);
});
