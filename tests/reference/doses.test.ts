import { describe, expect, it } from 'vitest';
import { limewaterSaturationGPerL } from '../../shared/seawater';
import { misses } from './check';
import { additiveEffectChecks } from './checks/additiveEffect';
import { limewaterDoseChecks } from './checks/limewaterDose';
import { portlanditeChecks } from './checks/portlandite';
import { stoichiometryChecks } from './checks/stoichiometry';

describe('doses', () => {
  it('of limewater move dKH within 0.02 and pH within 0.006, closed and with air again', () => {
    expect(limewaterDoseChecks()).toHaveLength(51 * 7);
    expect(misses(limewaterDoseChecks())).toEqual([]);
  });

  it('of four additives move pH within 0.006, and Ω within 0.5 %', () => {
    expect(additiveEffectChecks()).toHaveLength(48 * 7);
    expect(misses(additiveEffectChecks())).toEqual([]);
  });

  it('weigh what their formulas say', () => {
    expect(stoichiometryChecks()).toHaveLength(50);
    expect(misses(stoichiometryChecks())).toEqual([]);
  });

  it('of saturated limewater at 25 °C are what was measured', () => {
    // 0.0203 mol/L (Bates, Bower & Smith 1956), three figures; 74.093 g/mol.
    expect(limewaterSaturationGPerL(25)).toBeGreaterThan(0.02025 * 74.093);
    expect(limewaterSaturationGPerL(25)).toBeLessThan(0.02035 * 74.093);
  });

  it('of saturated limewater are within 3 % of the computed solubility from 15 to 35 °C', () => {
    expect(portlanditeChecks()).toHaveLength(5);
    expect(misses(portlanditeChecks())).toEqual([]);
  });
});
