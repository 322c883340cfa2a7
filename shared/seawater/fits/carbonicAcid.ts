import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// Total scale, mol per kg of seawater.
export const k1k2Lueker2000Range = {
  tempC: [2, 35],
  salinityPractical: [19, 43],
  source: 'lueker2000',
} as const satisfies FittedRange;

export function setK1K2Lueker2000(k: { k1: number; k2: number }, w: WaterTerms): void {
  const s = w.salinity;
  const pk1 =
    3633.86 * w.perKelvin - 61.2172 + 9.6777 * w.lnKelvin + (-0.011555 + 0.0001152 * s) * s;
  const pk2 = 471.78 * w.perKelvin + 25.929 - 3.16967 * w.lnKelvin + (-0.01781 + 0.0001122 * s) * s;
  k.k1 = Math.exp(-pk1 * Math.LN10);
  k.k2 = Math.exp(-pk2 * Math.LN10);
}
