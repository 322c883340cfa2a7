import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  carbonateFromAlkalinityDic,
  carbonateFromAlkalinityPco2,
  carbonateFromAlkalinityPh,
} from '../../shared/seawater';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

// Far beyond any tank: from acidified water to a limewater dump.
const anyWater = fc.record({
  alkalinityUmolPerKg: number(-2000, 20000),
  dicUmolPerKg: number(1, 20000),
  tempC: number(2, 40),
  salinityPractical: number(2, 45),
  phosphateUmolPerKg: number(0, 100),
  ammoniaUmolPerKg: number(0, 100),
});

describe('solving one water from different pairs', () => {
  it('gives the same water from alkalinity and pH, and from alkalinity and pCO2', () => {
    fc.assert(
      fc.property(anyWater, ({ dicUmolPerKg, ...water }) => {
        const first = carbonateFromAlkalinityDic({ ...water, dicUmolPerKg });
        fc.pre(first.pco2Uatm <= 1e6); // more than one atmosphere is not asked for
        const fromPh = carbonateFromAlkalinityPh({ ...water, phTotal: first.phTotal });
        const fromPco2 = carbonateFromAlkalinityPco2({ ...water, pco2Uatm: first.pco2Uatm });
        expect(Math.abs(fromPh.dicUmolPerKg - dicUmolPerKg)).toBeLessThan(
          1e-6 * dicUmolPerKg + 1e-6,
        );
        expect(Math.abs(fromPco2.phTotal - first.phTotal)).toBeLessThan(1e-9);
        expect(Math.abs(fromPco2.dicUmolPerKg / dicUmolPerKg - 1)).toBeLessThan(1e-8);
      }),
      { numRuns: 2000 },
    );
  });

  it('adds up: the species sum to the alkalinity and the DIC that went in', () => {
    fc.assert(
      fc.property(anyWater, (water) => {
        const solved = carbonateFromAlkalinityDic(water);
        const size = 1e-11 * (Math.abs(water.alkalinityUmolPerKg) + water.dicUmolPerKg + 500);
        expect(Math.abs(solved.alkalinityUmolPerKg - water.alkalinityUmolPerKg)).toBeLessThan(size);
        expect(Math.abs(solved.dicUmolPerKg - water.dicUmolPerKg)).toBeLessThan(size);
      }),
      { numRuns: 2000 },
    );
  });
});
