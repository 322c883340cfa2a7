import { describe, expect, it } from 'vitest';
import { saturationFactor, stopOmegaFor } from '../../../shared/processes/growthLaw';
import { poolsWith } from '../../../shared/species/species';
import { patience } from '../../laws/size';
import { misses } from '../../reference/check';
import { growthFactor, growthShapeChecks, growthTemperatureChecks } from './checks/growth';
import { skeletonChecks } from './checks/skeleton';
import { changeOver, equivalents, mol, onlyTank } from './onlyTank';

it('corals whose use was measured grow in water without carbonate, those of a typed area do not', () => {
  expect(stopOmegaFor(0.1, 'use')).toBeCloseTo(-0.1, 12);
  expect(stopOmegaFor(0.1, 'area')).toBe(0);
  expect(stopOmegaFor(3, 'use')).toBe(1);
});

describe('the skeleton of corals', () => {
  it('takes 7.05 mg/L of calcium, 0.14 of strontium and 0.017 of magnesium with each dKH', () => {
    expect(skeletonChecks()).toHaveLength(3);
    expect(misses(skeletonChecks())).toEqual([]);
  });

  it('costs two equivalents for each carbonate, whatever the metal', () => {
    const tank = onlyTank({
      corals: { useDkhPerDay: 1, skeletonMgPerCa: 200, skeletonSrPerCa: 30 },
    });
    const fall = changeOver(tank, 24, { eq: equivalents, dic: (t) => mol(t, 'DIC') });
    expect(fall.eq / fall.dic).toBeCloseTo(2, 9);
    expect(tank.books.pool('skeletonMgCO3') / tank.books.pool('skeletonCaCO3')).toBeCloseTo(0.2, 2);
  });

  it(
    'goes on growing when the strontium of the water is all but used up',
    () => {
      const tank = onlyTank({
        days: 60,
        corals: { useDkhPerDay: 2, skeletonSrPerCa: 30, growthPercentPerDay: 0 },
        dosers: (['sodiumCarbonate', 'calciumChlorideDihydrate'] as const).map((additive) => ({
          ...{ name: additive, stockL: 100, mlPerDay: 1000 },
          recipe: [{ additive, gramsPerL: additive === 'sodiumCarbonate' ? 11.34 : 15.73 }],
        })),
      });
      const start = mol(tank, 'Sr');
      tank.advanceTo(60 * 24);
      expect(mol(tank, 'Sr') / start).toBeLessThan(0.01);
      expect(mol(tank, 'Sr')).toBeGreaterThan(0);
      const day60 = tank.books.pool('skeletonCaCO3');
      expect(day60 / 60).toBeGreaterThan(0.08);
    },
    patience,
  );

  it('is never less than none where growth begins in the midst of a step', () => {
    for (const phNbs of [7.3, 7.4, 7.5]) {
      const tank = onlyTank({
        tank: { alkalinityDkh: 6 },
        start: { carbon: 'measuredPh', phNbs },
        corals: { useDkhPerDay: 4, skeletonMgPerCa: 5, skeletonSrPerCa: 9 },
        gas: { kLaPerH: 1 },
      });
      expect(tank.view.omegaAragonite).toBeLessThan(0.9);
      let leastMol = 0;
      tank.onStep = () => {
        for (const id of poolsWith('skeleton')) {
          leastMol = Math.min(leastMol, tank.books.pool(id));
        }
      };
      tank.advanceTo(24);
      expect(leastMol, `from pH ${phNbs}`).toBeGreaterThan(-1e-15);
      expect(tank.books.pool('skeletonCaCO3')).toBeGreaterThan(0.04);
    }
  });
});

describe('the growth of corals', () => {
  it('doubles evenly when they branch, and follows the root of the surface when they do not', () => {
    expect(growthShapeChecks()).toHaveLength(8);
    expect(misses(growthShapeChecks())).toEqual([]);
  });

  it('is none without carbonate where their area is typed, in however little they were seen to grow', () => {
    for (const seenOmega of [4, 1, 0.3, 0.1, 0]) {
      const stopOmega = stopOmegaFor(seenOmega, 'area');
      const reference = { omegaReference: 2, otherUseEqPerDay: 0, stopOmega };
      for (const proportional of [true, false]) {
        const factor = saturationFactor(0, reference, proportional);
        expect(Math.abs(factor), `seen at Ω ${seenOmega}`).toBe(0);
      }
    }
  });

  it('follows temperature from nothing at 18 °C over the best at 27 to nothing at 32', () => {
    expect(growthTemperatureChecks()).toHaveLength(8);
    expect(misses(growthTemperatureChecks())).toEqual([]);
  });

  it('stays as typed when it is told not to follow temperature, or starts where none should be', () => {
    const still = { growthPercentPerDay: 0 };
    expect(growthFactor({ ...still, temperatureLaw: 'none' }, 0, 31)).toBe(1);
    expect(growthFactor({ ...still, temperatureLaw: 'bell' }, 0, 31)).not.toBe(1);
    expect(growthFactor({ ...still, temperatureLaw: 'bell' }, 0, 22, 17)).toBe(1);
  });
});
