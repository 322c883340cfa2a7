import type { FittedRange } from './fits/fittedRange';
import { co2PerO2TransferVelocity } from './gas';

export const oxygenGarciaGordon1992Range = {
  tempC: [0, 40],
  salinityPractical: [0, 42],
  source: 'garciaGordon1992',
} as const satisfies FittedRange;

/**
 * Oxygen in water that rests under moist air at 1 atm, µmol/kg: the fit to Benson & Krause of
 * Garcia & Gordon 1992, equation 8 without the term that was printed by mistake.
 */
export function oxygenSaturationUmolPerKg(tempC: number, salinityPractical: number): number {
  const s = salinityPractical;
  const t = Math.log((298.15 - tempC) / (273.15 + tempC));
  const fresh =
    5.80871 + (3.20291 + (4.17887 + (5.10006 + (-9.86643e-2 + 3.80369 * t) * t) * t) * t) * t;
  const salted = -7.01577e-3 + (-7.70028e-3 + (-1.13864e-2 - 9.51519e-3 * t) * t) * t;
  return Math.exp(fresh + s * (salted - 2.75915e-7 * s));
}

/** Gas exchange of oxygen where that of CO2 is kLa, 1/h: k goes as Sc^-1/2 (wanninkhof2014). */
export const oxygenKLaPerH = (kLaPerH: number, tempC: number): number =>
  kLaPerH / co2PerO2TransferVelocity(tempC);
