import { describe, expect, it } from 'vitest';
import { densityKgPerM3 } from '../../shared/seawater';
import { misses } from './check';
import { conductivityChecks } from './checks/conductivity';
import { densityChecks } from './checks/density';
import { hydrometerChecks } from './checks/hydrometer';

describe('density and the instruments that measure salinity', () => {
  it('gives EOS-80 density of 218 waters within 0.002 kg/m³', () => {
    expect(densityChecks()).toHaveLength(218);
    expect(misses(densityChecks())).toEqual([]);
  });

  it('takes temperature as ITS-90: 1023.34123 at S 35, 25 °C, not 1023.34306 (erratum 2)', () => {
    expect(densityKgPerM3(25, 35)).toBeCloseTo(1023.34123, 4);
  });

  it('turns salinity into specific gravity and hydrometer readings, and back', () => {
    expect(hydrometerChecks()).toHaveLength(28 * 18);
    expect(misses(hydrometerChecks())).toEqual([]);
  });

  it('turns salinity into conductivity and back', () => {
    expect(conductivityChecks()).toHaveLength(28 * 4);
    expect(misses(conductivityChecks())).toEqual([]);
  });
});
