import { describe, expect, it } from 'vitest';
import { equilibriumConstants } from '../../shared/seawater';
import { misses } from './check';
import { constantsChecks } from './checks/constants';
import { totalsChecks } from './checks/totals';

describe('equilibrium constants', () => {
  it('give every pK of 41 waters within 2e-5, and the scale ratios to the digits printed', () => {
    expect(constantsChecks()).toHaveLength(41 * 12);
    expect(misses(constantsChecks())).toEqual([]);
  });

  it('come with the totals that go with salinity, to the digits printed', () => {
    expect(totalsChecks()).toHaveLength(41 * 5);
    expect(misses(totalsChecks())).toEqual([]);
  });

  it('give ln KW within 0.016 of the printed -30.434, whose scale shift is flat (erratum 1)', () => {
    const { kw } = equilibriumConstants({ tempC: 25, salinityPractical: 35 });
    expect(Math.abs(Math.log(kw) - -30.434)).toBeLessThan(0.016);
  });

  it('give ln KP1 within 0.01 of the -3.71 beside its formula in the guide', () => {
    const k = equilibriumConstants({ tempC: 25, salinityPractical: 35 });
    expect(Math.abs(Math.log(k.kp1 * k.hSwsPerHTotal) - 0.015 - -3.71)).toBeLessThan(0.01);
  });

  it.each([
    [{ tempC: NaN, salinityPractical: 35 }, /tempC is NaN; expected/],
    [{ tempC: 25, salinityPractical: -1 }, /salinityPractical is -1; expected/],
  ])('refuse a water that is none: %o', (water, message) => {
    expect(() => equilibriumConstants(water)).toThrow(RangeError);
    expect(() => equilibriumConstants(water)).toThrow(message);
  });
});
