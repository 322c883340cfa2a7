import fc from 'fast-check';
import { expect, it } from 'vitest';
import { testPace } from '../../shared/log/testPace';
import { withSupply } from '../../shared/log/supply';
import { orderBy } from '../../shared/recipe/orderBy';
import { twoPart } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { orderText, paceText } from '../../src/say/stock/order';
import { usualOptions } from '../../workers/engine/simulation';
import { filled } from '../../workers/studies/away/filled';
import { LeftTank } from '../../workers/studies/away/leftTank';
import { unattended } from '../../workers/studies/away/unattended';
import { pacesOf } from '../../workers/studies/stock/paces';
import { patience, runsOf } from '../laws/size';
import { anyTurn } from './anyTurn';

const AMPLE_L = { reservoir: 3000, bottle: 500 };
const DAYS = 14;

/** A tank whose pumps and evaporation are off by so much, turned to follow a use that is. */
function offBy(plan: Scenario, pumps: number, air: number, use: number): Scenario {
  const dosers = plan.dosers.map((one) => ({
    ...one,
    mlPerDay: one.mlPerDay * pumps * use,
    schedule: { ...one.schedule, pumpMlPerMin: one.schedule.pumpMlPerMin * pumps * use },
  }));
  const gramsPerL = plan.topOff.gramsPerL * use;
  return {
    ...plan,
    dosers,
    topOff: { ...plan.topOff, gramsPerL },
    evaporation: { ...plan.evaporation, litresPerDay: plan.evaporation.litresPerDay * air },
  };
}

/** Grams a day of everything, as a tank truly draws them. */
function drawnGrams(plan: Scenario): Map<string, number> {
  const left = filled(unattended(plan, DAYS), AMPLE_L.reservoir);
  const dosers = left.dosers.map((one) => ({ ...one, stockL: AMPLE_L.bottle }));
  const ample = { ...left, dosers };
  const { reservoirUsed, bottlesUsed } = new LeftTank(ample, usualOptions).run(ample);
  const grams = new Map<string, number>();
  const add = (id: string, perDay: number) => grams.set(id, (grams.get(id) ?? 0) + perDay);
  const { additive, gramsPerL } = plan.topOff;
  if (additive !== 'none') add(additive, (reservoirUsed * AMPLE_L.reservoir * gramsPerL) / DAYS);
  plan.dosers.forEach(({ recipe }, i) => {
    for (const part of recipe) {
      add(part.additive, (bottlesUsed[i]! * AMPLE_L.bottle * part.gramsPerL) / DAYS);
    }
  });
  return grams;
}

/** The keeper's arithmetic: mL a day, or what evaporates less what the pumps bring, times g/L. */
function byHand({ topOff, dosers, evaporation }: Scenario): Map<string, number> {
  const grams = new Map<string, number>();
  const add = (id: string, perDay: number) => grams.set(id, (grams.get(id) ?? 0) + perDay);
  const pumpedL = dosers.reduce((sum, { mlPerDay }) => sum + mlPerDay / 1000, 0);
  const topL = Math.max(0, evaporation.litresPerDay - pumpedL);
  if (topOff.additive !== 'none') add(topOff.additive, topL * topOff.gramsPerL);
  for (const { recipe, mlPerDay } of dosers) {
    for (const { additive, gramsPerL } of recipe) add(additive, (mlPerDay / 1000) * gramsPerL);
  }
  return grams;
}

const share = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: 0, max: 1000 })).map((n) => min + ((max - min) * n) / 1000);

const asked = fc.record({
  any: anyTurn,
  pumps: share(0.8, 1.2),
  air: share(0.6, 1.4),
  use: share(-1, 1),
  left: share(50, 5000),
  shopDays: fc.noBias(fc.integer({ min: 0, max: 21 })),
});

it(
  'what is ordered by the date is there before it runs out in the true tank, and as set it is hand arithmetic',
  () => {
    let [tried, late, lateByHand] = [0, 0, 0];
    fc.assert(
      fc.property(asked, ({ any, pumps, air, use, left, shopDays }) => {
        const { known: now, giveOrTakeDkhPerDay } = any;
        const { useDkhPerDay } = now.corals;
        const useShare = useDkhPerDay > 0 ? Math.min(1, giveOrTakeDkhPerDay / useDkhPerDay) : 0;
        const paces = pacesOf({ now, giveOrTakeDkhPerDay });
        const truly = drawnGrams(offBy(now, pumps, air, 1 + use * useShare));
        const hand = byHand(now);
        const powders = paces.filter(({ id }) => id !== 'salt');
        expect(new Set(powders.map(({ id }) => id))).toEqual(
          new Set([...hand].filter(([, grams]) => grams > 0).map(([id]) => id)),
        );
        for (const { id, ...pace } of powders) {
          const grams = hand.get(id)!;
          expect(Math.abs(pace.perDay / grams - 1)).toBeLessThan(0.03);
          const trulyPerDay = truly.get(id)!;
          expect(trulyPerDay).toBeLessThanOrEqual(pace.mostPerDay);
          expect(trulyPerDay).toBeGreaterThanOrEqual(pace.leastPerDay * 0.99);
          const found = orderBy(left, pace, shopDays)!;
          tried++;
          const outDays = left / trulyPerDay;
          // Never later than what runs out at the upper end of the doubt, by hand.
          expect(found.soonestDays).toBeLessThanOrEqual(left / (pace.perDay * (1 + useShare)));
          if (found.orderDays + shopDays > outDays) late++;
          if (Math.floor(left / grams - shopDays) + shopDays > outDays) lateByHand++;
          const supply = { id, left, countedAt: '2026-11-27T10:00' } as const;
          for (const today of ['2026-11-27T10:00', '2027-06-01T10:00']) {
            const text = `${paceText(id, pace)} ${orderText(supply, pace, shopDays, today)}`;
            expect(text).not.toMatch(/NaN|undefined|Infinity|[^\d]-\d/);
            expect(text).toMatch(/Order (by|now)|No order yet: .* it lasts \d+ years/);
          }
        }
      }),
      runsOf(150),
    );
    console.log(
      `late ${late} of ${tried} (grams left / grams a day, less the shop: ${lateByHand})`,
    );
    expect(late).toBe(0);
    expect(lateByHand).toBeGreaterThan(0);
  },
  patience,
);

const tank = scenarioOf({
  tank: { volumeL: 300 },
  corals: { useDkhPerDay: 1 },
  evaporation: { litresPerDay: 4 },
  waterChanges: { percent: 10, everyDays: 7 },
});

it('a pair and its salt, by hand', () => {
  const now = { ...tank, dosers: twoPart('sodiumCarbonate', 60, tank) };
  const paces = new Map(pacesOf({ now, giveOrTakeDkhPerDay: 0 }).map((one) => [one.id, one]));
  // 60 mL of 100 g/L a day: 6 g, and a fifth more at most.
  expect(paces.get('sodiumCarbonate')!.perDay).toBeCloseTo(6, 2);
  expect(paces.get('sodiumCarbonate')!.mostPerDay).toBeCloseTo(7.2, 1);
  // 30 L a week at 39 g/L of 35 ppt: 1.2 kg a week, a little more for the density of salt water.
  const salt = paces.get('salt')!.perDay * 7;
  expect(salt).toBeGreaterThan(1150);
  expect(salt).toBeLessThan(1250);
  const supply = { id: 'sodiumCarbonate', left: 300, countedAt: '2026-11-27T10:00' } as const;
  // 300 g: a hair less than 50 days as set; 41 at the upper end, so 34 with a week for the shop; 63 at the lower.
  expect(orderText(supply, paces.get('sodiumCarbonate')!, 7, '2026-11-27T12:00')).toBe(
    'Order by 31 December 2026: it may run out between 7 January 2027 and 29 January 2027, on 15 January 2027 as set.',
  );
  expect(orderText(supply, paces.get('sodiumCarbonate')!, 7, '2027-01-02T12:00')).toMatch(
    /^Order now: it may run out between 7 January/,
  );
  expect(orderText(supply, paces.get('sodiumCarbonate')!, 7, '2027-01-12T12:00')).toBe(
    'Order now: it may have run out since 7 January 2027. Count again.',
  );
});

it('of what no scale shows in a day the month is told, and what lasts for decades is no date', () => {
  const pace = { perDay: 0.0437, leastPerDay: 0.032, mostPerDay: 0.057 };
  expect(paceText('magnesiumChlorideHexahydrate', pace)).toMatch(
    /^1\.31 g a month \(0\.96–1\.7\);/,
  );
  const id = 'magnesiumChlorideHexahydrate';
  const supply = { id, left: 500, countedAt: '2026-11-27T10:00' } as const;
  // 500 g ÷ 0.057 g a day ÷ 365: 24 years.
  expect(orderText(supply, pace, 7, '2026-11-27T12:00')).toMatch(/^No order yet: .* 24 years\./);
});

it('tests go as often as the log has them, weekly at least, and what is counted anew takes the place of the old', () => {
  const daily = Array.from({ length: 28 }, (_, day) => ({
    at: `2026-03-${String(day + 1).padStart(2, '0')}T10:30`,
    alkalinityDkh: 8,
  }));
  expect(testPace(daily).perDay).toBeCloseTo(1, 6);
  expect(testPace([]).perDay).toBeCloseTo(1 / 7, 6);
  expect(testPace(daily.map(({ at }) => ({ at, phNbs: 8.2 }))).perDay).toBeCloseTo(1 / 7, 6);
  // Ten tests, one a week: 70 days as set.
  expect(orderBy(10, testPace([]), 7)!.asSetDays).toBe(70);
  expect(orderBy(10, { perDay: 0, mostPerDay: 0, leastPerDay: 0 }, 7)).toBeUndefined();
  const old = { id: 'tests', left: 10, countedAt: '2026-03-01T10:00' } as const;
  const anew = { ...old, left: 4 };
  expect(withSupply([old], anew)).toEqual([anew]);
});
