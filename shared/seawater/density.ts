import { requireWater } from './require';
import type { FittedRange } from './fits/fittedRange';

export const densityEos80Range = {
  tempC: [-2, 40],
  salinityPractical: [0, 42],
  source: 'milleroPoisson1981',
} as const satisfies FittedRange;

/**
 * EOS-80 at one atmosphere (milleroPoisson1981). Trap: the fit wants IPTS-68 and tempC is ITS-90,
 * 1.00024 apart (prestonThomas1990), which is 0.002 kg/m3 at 25 °C.
 */
export function densityKgPerM3(tempC: number, salinity: number): number {
  const t = tempC * 1.00024;
  const pure =
    999.842594 +
    (6.793952e-2 + (-9.09529e-3 + (1.001685e-4 + (-1.120083e-6 + 6.536332e-9 * t) * t) * t) * t) *
      t;
  const a = 0.824493 + (-4.0899e-3 + (7.6438e-5 + (-8.2467e-7 + 5.3875e-9 * t) * t) * t) * t;
  const b = -5.72466e-3 + (1.0227e-4 - 1.6546e-6 * t) * t;
  return pure + (a + b * Math.sqrt(salinity) + 4.8314e-4 * salinity) * salinity;
}

export interface DensityInput {
  tempC: number;
  salinityPractical: number;
}

export function seawaterDensityKgPerM3({ tempC, salinityPractical }: DensityInput): number {
  requireWater(tempC, salinityPractical);
  return densityKgPerM3(tempC, salinityPractical);
}
