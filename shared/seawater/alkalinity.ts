import { molarMassGPerMol } from './atomicMasses';
import { densityKgPerM3 } from './density';

/** 1 dKH is the alkalinity of 10 mg CaO per litre, and CaO neutralises two acid equivalents. */
export const meqPerLPerDkh = (2 * 10) / molarMassGPerMol({ Ca: 1, O: 1 });

export function meqPerLFromDkh(dkh: number): number {
  return dkh * meqPerLPerDkh;
}

export function dkhFromMeqPerL(meqPerL: number): number {
  return meqPerL / meqPerLPerDkh;
}

// dKH is per litre at the tank's temperature, µmol/kg per kg of seawater: the density joins them.
export function umolPerKgFromMeqPerL(
  meqPerL: number,
  tempC: number,
  salinityPractical: number,
): number {
  return (meqPerL * 1e6) / densityKgPerM3(tempC, salinityPractical);
}

export function meqPerLFromUmolPerKg(
  umolPerKg: number,
  tempC: number,
  salinityPractical: number,
): number {
  return umolPerKg * densityKgPerM3(tempC, salinityPractical) * 1e-6;
}

export function umolPerKgFromDkh(dkh: number, tempC: number, salinityPractical: number): number {
  return umolPerKgFromMeqPerL(meqPerLFromDkh(dkh), tempC, salinityPractical);
}

export function dkhFromUmolPerKg(
  umolPerKg: number,
  tempC: number,
  salinityPractical: number,
): number {
  return dkhFromMeqPerL(meqPerLFromUmolPerKg(umolPerKg, tempC, salinityPractical));
}
