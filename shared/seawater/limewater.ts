import { dkhFromMeqPerL, meqPerLFromDkh } from './alkalinity';
import { molarMassGPerMol } from './atomicMasses';

const gPerMol = molarMassGPerMol({ Ca: 1, O: 2, H: 2 });

/** 0.0203 mol/L saturated at 25 °C (bates1956). Handbooks differ by 5 to 15 %: it is an input. */
export const limewaterSaturatedMeqPerL = 40.6;

export const limewaterSaturationRange = {
  tempC: [15, 35],
  relativeUncertainty: 0.03,
  source: 'thermoddem2012',
} as const;

// Our line: through bates1956 at 25 °C, sloped as portlandite in the thermoddem2012 database.
export function limewaterSaturationGPerL(tempC: number): number {
  return limewaterGPerLFromMeqPerL(limewaterSaturatedMeqPerL) - 0.0094 * (tempC - 25);
}

export function limewaterMeqPerLFromGPerL(gPerL: number): number {
  return (gPerL * 2000) / gPerMol;
}

export function limewaterGPerLFromMeqPerL(meqPerL: number): number {
  return (meqPerL * gPerMol) / 2000;
}

export function limewaterDkhFromGPerL(gPerL: number): number {
  return dkhFromMeqPerL(limewaterMeqPerLFromGPerL(gPerL));
}

export function limewaterGPerLFromDkh(dkh: number): number {
  return limewaterGPerLFromMeqPerL(meqPerLFromDkh(dkh));
}
