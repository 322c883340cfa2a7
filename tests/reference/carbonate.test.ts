import { describe, expect, it } from 'vitest';
import { carbonateFromAlkalinityDic, carbonateFromAlkalinityPh } from '../../shared/seawater';
import { misses } from './check';
import { airEquilibriumChecks } from './checks/airEquilibrium';
import { carbonateChecks } from './checks/carbonate';

const reef = { alkalinityUmolPerKg: 2300, dicUmolPerKg: 2000, tempC: 25, salinityPractical: 35 };
const checks = carbonateChecks();
const regimes = [...new Set(checks.map(({ id }) => id.split('/')[1] ?? ''))];

describe('the carbonate system', () => {
  it('is held against all 529 waters of the table, 17 numbers each', () => {
    expect(checks).toHaveLength(529 * 17);
    expect(regimes).toHaveLength(7);
  });

  it.each(regimes)(
    'meets the table in the regime %s: pH to 1e-4, pCO2 to 0.05 %, others as libraries agree',
    (regime) => {
      expect(misses(checks.filter(({ id }) => id.split('/')[1] === regime))).toEqual([]);
    },
  );

  it('gives the pH of water in equilibrium with air within 0.004', () => {
    expect(airEquilibriumChecks()).toHaveLength(49 * 3);
    expect(misses(airEquilibriumChecks())).toEqual([]);
  });

  it('scales Ω, and nothing else, with the calcium of the tank', () => {
    const { omegaAragonite, ...rest } = carbonateFromAlkalinityDic(reef);
    const doubled = carbonateFromAlkalinityDic({ ...reef, calciumUmolPerKg: 2 * 10284.5697 });
    expect(doubled.omegaAragonite / omegaAragonite).toBeCloseTo(2, 8);
    expect(doubled.phTotal).toBe(rest.phTotal);
  });

  it('adds up its acids and bases to the alkalinity', () => {
    const water = carbonateFromAlkalinityDic({
      ...reef,
      phosphateUmolPerKg: 5,
      ammoniaUmolPerKg: 40,
    });
    const bases = water.hco3UmolPerKg + 2 * water.co3UmolPerKg + water.boh4UmolPerKg;
    const acids = water.hFreeUmolPerKg + water.hso4UmolPerKg + water.hfUmolPerKg;
    const rest = water.ohUmolPerKg + water.nh3UmolPerKg + water.phosphateAlkalinityUmolPerKg;
    expect(bases + rest - acids).toBeCloseTo(reef.alkalinityUmolPerKg, 3);
  });

  it('moves pH by up to 0.033 with the other borate total', () => {
    const lee = carbonateFromAlkalinityDic({ ...reef, borateOption: 'lee2010' });
    const difference = carbonateFromAlkalinityDic(reef).phTotal - lee.phTotal;
    expect(difference).toBeGreaterThan(0.001);
    expect(difference).toBeLessThan(0.033);
  });

  it.each([
    ['dicUmolPerKg', { dicUmolPerKg: -1 }],
    ['dicUmolPerKg', { dicUmolPerKg: NaN }],
    ['alkalinityUmolPerKg', { alkalinityUmolPerKg: Infinity }],
    ['calciumUmolPerKg', { calciumUmolPerKg: -1 }],
    ['phosphateUmolPerKg', { phosphateUmolPerKg: NaN }],
    ['tempC', { tempC: 100 }],
    ['salinityPractical', { salinityPractical: NaN }],
  ])('refuses an impossible %s by its name: %o', (name, wrong) => {
    expect(() => carbonateFromAlkalinityDic({ ...reef, ...wrong })).toThrow(RangeError);
    expect(() => carbonateFromAlkalinityDic({ ...reef, ...wrong })).toThrow(
      new RegExp(`^${name} is .*expected`),
    );
  });

  it('refuses a pH too high for the alkalinity, since DIC would be negative', () => {
    expect(() => carbonateFromAlkalinityPh({ ...reef, phTotal: 12 })).toThrow(/negative/);
  });
});
