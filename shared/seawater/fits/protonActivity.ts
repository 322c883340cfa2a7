import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// Range from memory: the data behind it are Culberson & Pytkowicz 1973.
export const fHTakahashi1982Range = {
  tempC: [5, 35],
  salinityPractical: [20, 40],
  source: 'takahashi1982',
} as const satisfies FittedRange;

/** Apparent activity coefficient of H+: 10^-pH(NBS) over [H+] on the seawater scale. */
export function setFhTakahashi1982(k: { fH: number }, w: WaterTerms): void {
  k.fH =
    1.2948 - 0.002036 * w.kelvin + (0.0004607 - 0.000001475 * w.kelvin) * w.salinity * w.salinity;
}
