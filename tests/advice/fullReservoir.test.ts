import { expect, it } from 'vitest';
import { filled } from '../../workers/studies/away/filled';
import { provisionsOf } from '../../workers/studies/away/provisions';
import { dumpHolds, fullestBottleL } from '../../workers/studies/plan/fullDump';
import { quietTank } from '../runs/quietTank';

const topped = (reservoirL: number, gramsPerL: number) =>
  quietTank({
    evaporation: { litresPerDay: 2 },
    topOff: { reservoirL, additive: 'sodiumBicarbonate', gramsPerL },
  });

it('a reservoir is filled with a mix as strong as the plan’s, and where there is none with plain water', () => {
  const as = { additive: 'sodiumBicarbonate', gramsPerL: 5 };
  expect(filled(topped(20, 5), 60).topOff).toMatchObject({ reservoirL: 60, ...as });
  const none = { reservoirL: 60, additive: 'none', gramsPerL: 0 };
  expect(filled(topped(0, 5), 60).topOff).toMatchObject(none);
  expect(filled(topped(20, 5), 60, 0).topOff).toMatchObject(none);
});

it('a full dump holds as long as alkalinity stays inside, whatever pH does', () => {
  // By hand, 2.996 g raise 100 L by 1 dKH (additives.csv): from 8 dKH 10 g to 9.1, and 100 g to 19.
  expect(dumpHolds(topped(20, 0.5))).toBe(true);
  expect(dumpHolds(topped(20, 5))).toBe(false);
});

it('a mix that lasts and does no harm is left before plain water is', () => {
  const need = { name: undefined, needL: 10, mostUsedL: 9, dailyL: 2, dailyMostL: 2, hasL: 20 };
  const lasts = { usedL: 8, lastsDays: undefined, surelyDays: undefined, harmless: undefined };
  const vessels = [{ ...need, ...lasts, pump: undefined }];
  const [first] = provisionsOf({
    ...{ now: topped(20, 0.5), vessels, untilVisit: undefined, mayHarm: 'none' },
  });
  const topOff = { reservoirL: 10, additive: 'sodiumBicarbonate', gramsPerL: 0.5 };
  expect(first).toMatchObject({ kind: 'filled', scenario: { topOff } });
});

it('a bottle is filled as far as its own mix allows, and not that of another pump', () => {
  const dosers = [60, 30].map((gramsPerL) => ({
    ...{ name: 'soda', mlPerDay: 1, stockL: 2 },
    recipe: [{ additive: 'sodiumBicarbonate' as const, gramsPerL }],
  }));
  const tank = quietTank({ dosers });
  // From 8 dKH to 0.3 below 11 there are 2.7: 24.3 g in 300 L, of 60 and of 30 g/L.
  expect(fullestBottleL(tank, 0)).toBeCloseTo(0.405, 2);
  expect(fullestBottleL(tank, 1)).toBeCloseTo(0.809, 2);
});
