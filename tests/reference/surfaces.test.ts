import { describe, expect, it } from 'vitest';
import { SeawaterConstants } from '../../shared/seawater/constants';
import { evaporationKgPerM2PerH } from '../../shared/seawater/evaporation';
import { precipitationUmolPerM2PerH } from '../../shared/seawater/precipitation';
import { misses } from './check';
import { co2EnhancementAt25, enhancementChecks } from './checks/enhancement';
import { evaporationChecks } from './checks/evaporation';
import { precipitationRateChecks } from './checks/precipitationRates';

describe('evaporation from a water surface', () => {
  it('is within 0.5 % of worked examples, and so are both vapour pressures', () => {
    expect(evaporationChecks()).toHaveLength(9 * 3);
    expect(misses(evaporationChecks())).toEqual([]);
  });

  it('is none into a room that is warmer and as moist as the water', () => {
    const room = { waterTempC: 22, airTempC: 30, relativeHumidity: 1, salinityPractical: 35 };
    expect(evaporationKgPerM2PerH(room)).toBe(0);
  });
});

describe('aragonite on bare solid', () => {
  it('grows at the rates of two published laws, to the digits printed', () => {
    expect(precipitationRateChecks()).toHaveLength(48 + 12);
    expect(misses(precipitationRateChecks())).toEqual([]);
  });

  it('does not grow at or below saturation', () => {
    for (const law of ['burtonWalter1987', 'zhongMucci1989'] as const) {
      expect([0, 0.5, 0.99, 1].map((omega) => precipitationUmolPerM2PerH(omega, 25, law))).toEqual([
        0, 0, 0, 0,
      ]);
      expect(precipitationUmolPerM2PerH(1.01, 25, law)).toBeGreaterThan(0);
    }
  });
});

describe('CO2 that reacts in the film at the surface', () => {
  it('crosses a still surface several times faster, within 2 % of worked values', () => {
    expect(enhancementChecks()).toHaveLength(3);
    expect(misses(enhancementChecks())).toEqual([]);
  });

  it('crosses a well-stirred one as if it did not react', () => {
    const k = new SeawaterConstants();
    k.set(25, 35);
    expect(co2EnhancementAt25(k, 10 ** -8.1, 5).times).toBeCloseTo(1, 3);
  });

  it('answers to pH and to stirring as its slopes say, over still and stirred surfaces', () => {
    const k = new SeawaterConstants();
    k.set(25, 35);
    for (const [transferMPerH, phTotal] of [
      [0.02, 7.5],
      [0.02, 9],
      [0.1, 8.1],
      [1, 8.6],
    ] as const) {
      const hTotal = 10 ** -phTotal;
      const timesAt = (lnH: number, lnTransfer: number) =>
        co2EnhancementAt25(k, hTotal * Math.exp(lnH), transferMPerH * Math.exp(lnTransfer)).times;
      const slopes = co2EnhancementAt25(k, hTotal, transferMPerH);
      expect(slopes.timesPerLnH).toBeCloseTo((timesAt(1e-4, 0) - timesAt(-1e-4, 0)) / 2e-4, 6);
      const byStirring = (timesAt(0, 1e-4) - timesAt(0, -1e-4)) / 2e-4;
      expect(slopes.timesPerLnTransfer).toBeCloseTo(byStirring, 6);
    }
  });
});
