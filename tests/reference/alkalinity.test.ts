import { describe, expect, it } from 'vitest';
import {
  dkhFromMeqPerL,
  dkhFromUmolPerKg,
  limewaterDkhFromGPerL,
  limewaterGPerLFromDkh,
  limewaterGPerLFromMeqPerL,
  limewaterMeqPerLFromGPerL,
  limewaterSaturatedMeqPerL,
  meqPerLFromDkh,
  umolPerKgFromDkh,
} from '../../shared/seawater';

describe('alkalinity units', () => {
  it('make 1 dKH 0.35665 meq/L, the alkalinity of 10 mg CaO per litre', () => {
    expect(meqPerLFromDkh(1)).toBeCloseTo(0.35665, 5);
    expect(dkhFromMeqPerL(meqPerLFromDkh(8.4))).toBeCloseTo(8.4, 12);
  });

  it('make 8 dKH 2788 µmol/kg at S 35, 25 °C, and less in denser, colder water', () => {
    expect(umolPerKgFromDkh(8, 25, 35)).toBeCloseTo(2788, 0);
    expect(umolPerKgFromDkh(8, 20, 35)).toBeLessThan(umolPerKgFromDkh(8, 25, 35));
    expect(dkhFromUmolPerKg(umolPerKgFromDkh(8, 25, 35), 25, 35)).toBeCloseTo(8, 12);
  });

  it('make saturated limewater of 40.6 meq/L 113.8 dKH and 1.504 g/L', () => {
    const gPerL = limewaterGPerLFromMeqPerL(limewaterSaturatedMeqPerL);
    expect(gPerL).toBeCloseTo(1.504, 3);
    expect(limewaterMeqPerLFromGPerL(gPerL)).toBeCloseTo(limewaterSaturatedMeqPerL, 12);
    expect(limewaterDkhFromGPerL(gPerL)).toBeCloseTo(113.8, 1);
    expect(limewaterGPerLFromDkh(limewaterDkhFromGPerL(gPerL))).toBeCloseTo(gPerL, 12);
  });
});
