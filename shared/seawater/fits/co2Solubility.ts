import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

export const k0Weiss1974Range = {
  tempC: [-1, 40],
  salinityPractical: [0, 40],
  source: 'weiss1974',
} as const satisfies FittedRange;

/** k0 in mol per kg of seawater per atm of fugacity, and how far fCO2 falls short of pCO2 at 1 atm. */
export function setK0Weiss1974(k: { k0: number; fco2PerPco2: number }, w: WaterTerms): void {
  const hundreds = w.kelvin * 0.01;
  const lnK0 =
    -60.2409 +
    9345.17 * w.perKelvin +
    23.3585 * (w.lnKelvin - Math.LN10 * 2) +
    w.salinity * (0.023517 + (-0.023656 + 0.0047036 * hundreds) * hundreds);
  const virialCm3PerMol = secondVirialCm3PerMol(w.kelvin) + 2 * (57.7 - 0.118 * w.kelvin);
  k.k0 = Math.exp(lnK0);
  const x = (virialCm3PerMol * 1.01325 * w.perKelvin) / gasConstantCm3BarPerMolK;
  k.fco2PerPco2 = 1 + x * (1 + x * (0.5 + x / 6)); // exp(x) to 1e-10: x is never beyond -0.006
}

const gasConstantCm3BarPerMolK = 83.14462618; // CODATA 2018

export function secondVirialCm3PerMol(kelvin: number): number {
  return -1636.75 + (12.0408 + (-0.0327957 + 3.16528e-5 * kelvin) * kelvin) * kelvin;
}
