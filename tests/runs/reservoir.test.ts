import { expect, it } from 'vitest';
import { crossProblems } from '../../shared/scenario/crossChecks';
import {
  limewaterSaturatedMeqPerL,
  limewaterSaturationGPerL,
} from '../../shared/seawater/limewater';
import { additives } from '../../shared/species/additives';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { quietTank } from './quietTank';

const topOff = { reservoirL: 20, refillEveryDays: 2, pumpLPerH: 3, deadBandL: 0.5 };
const mixed = (additive: 'sodiumCarbonate' | 'calciumHydroxide', gramsPerL: number) =>
  run(
    quietTank({
      days: 9,
      tank: { volumeL: 300 },
      evaporation: { litresPerDay: 4 },
      topOff: { ...topOff, additive, gramsPerL },
    }),
  ).trace;

it.each([
  ['sodiumCarbonate', 60],
  ['calciumHydroxide', 1.4],
] as const)('a reservoir of 20 L with %s at %d g/L reads 20 L when full', (additive, gramsPerL) => {
  const trace = mixed(additive, gramsPerL);
  expect(readColumn(trace, 'reservoir_l')[0]).toBeCloseTo(20, 1);
  expect(Math.max(...readColumn(trace, 'reservoir_l'))).toBeLessThan(20.02);
  // What evaporates is topped off, and no more is counted: 4 L a day.
  expect(Math.abs(readColumn(trace, 'topoff_l').at(-1)! - 36)).toBeLessThan(1.5);
});

it('is saturated at one strength, whichever way it is asked', () => {
  const { molarMassG } = additives.calciumHydroxide;
  // Bates, Bower & Smith 1956: 0.0203 mol/L at 25 °C.
  expect(limewaterSaturationGPerL(25)).toBeCloseTo(0.0203 * molarMassG, 6);
  expect(limewaterSaturatedMeqPerL).toBe(40.6);
});

it('lets a plan run whose evaporation a dosing pump replaces, and no other without top-off', () => {
  const short = quietTank({ days: 1, tank: { volumeL: 100 }, evaporation: { litresPerDay: 2 } });
  const dry = { ...short, days: 60 };
  const fresh = { name: 'fresh', recipe: [], mlPerDay: 2000, stockL: 20 };
  const [schedule] = quietTank({ dosers: [fresh] }).dosers;
  expect(crossProblems(dry).map(({ path }) => path)).toEqual(['evaporation.litresPerDay']);
  expect(crossProblems({ ...dry, dosers: [schedule!] })).toEqual([]);
});
