import { expect, it } from 'vitest';
import { filled } from '../../workers/studies/away/filled';
import { dumpHolds } from '../../workers/studies/plan/fullDump';
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
