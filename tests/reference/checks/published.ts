import {
  densityKgPerM3,
  equilibriumConstants,
  specificGravity2525,
  unionisedAmmoniaFraction,
} from '../../../shared/seawater';
import { secondVirialCm3PerMol } from '../../../shared/seawater/fits/co2Solubility';
import type { Check } from '../check';
import { orr2018Got } from '../orr2018';
import { mocsyGot } from '../mocsyWater';
import { readTable } from '../table';

const k = equilibriumConstants({ tempC: 25, salinityPractical: 35 });
const waterFraction = (salinity: number) => 1 - 0.001005 * salinity;
const its90 = (ipts68: number) => ipts68 / 1.00024;

/** The guide's phosphate constants are those on the seawater scale less a flat 0.015. */
const asTheGuideShifts = (kTotal: number) => Math.log(kTotal * k.hSwsPerHTotal) - 0.015;

function molalAmmoniaFraction(phTotal: number, tempC: number, salinityPractical: number): number {
  const fraction = unionisedAmmoniaFraction({ phTotal, tempC, salinityPractical });
  const odds = fraction / (1 - fraction) / waterFraction(salinityPractical);
  return odds / (1 + odds);
}

/** Our value for each row of published.csv that these functions can answer. */
const got: Record<string, () => number> = {
  P000: () => Math.log(k.k0),
  P002: () => Math.log10(k.k2),
  P003: () => Math.log(k.kb),
  P005: () => Math.log(k.ks),
  P006: () => Math.log(k.kf),
  P008: () => asTheGuideShifts(k.kp2),
  P009: () => asTheGuideShifts(k.kp3),
  P011: () => secondVirialCm3PerMol(298.15),
  P013: () => Math.log10(k.kspAragonite),
  P014: () => Math.log10(k.kspCalcite),
  P015: () => k.kspCalcite,
  P017: () => molalAmmoniaFraction(8, 10, 0),
  P018: () => molalAmmoniaFraction(8, 25, 0),
  P020: () => molalAmmoniaFraction(7.8, 25, 35),
  P021: () => -Math.log10(equilibriumConstants({ tempC: 25, salinityPractical: 0 }).kNh4),
  P024: () => densityKgPerM3(its90(25), 0),
  P025: () => densityKgPerM3(its90(5), 35),
  P078: () => specificGravity2525(35),
  ...orr2018Got,
  ...mocsyGot,
};

export const computablePublishedRows: readonly string[] = Object.keys(got);

export function publishedChecks(): Check[] {
  return readTable('published.csv').flatMap((row) => {
    const ours = got[row.text('case_id')];
    if (!ours) return [];
    return {
      id: `published/${row.text('case_id')}`,
      quantity: `${row.text('quantity')}, ${row.text('conditions')}`,
      source: row.text('source'),
      howVerified: howVerified(row.text('how_verified')),
      expected: row.number('value'),
      got: ours(),
      tolerance: row.number('tolerance'),
      unit: row.text('unit'),
    };
  });
}

function howVerified(note: string): Check['howVerified'] {
  if (/from memory/i.test(note)) return 'from memory';
  return /read/.test(note) ? 'read' : 'computed';
}
