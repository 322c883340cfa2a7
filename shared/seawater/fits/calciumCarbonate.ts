import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// Solubility products, mol2 per kg2 of seawater.
export const kspMucci1983Range = {
  tempC: [5, 40],
  salinityPractical: [5, 44],
  source: 'mucci1983',
} as const satisfies FittedRange;

export function setKspAragoniteMucci1983(k: { kspAragonite: number }, w: WaterTerms): void {
  const log10Ksp =
    -171.945 -
    0.077993 * w.kelvin +
    2903.293 * w.perKelvin +
    71.595 * Math.LOG10E * w.lnKelvin +
    (-0.068393 + 0.0017276 * w.kelvin + 88.135 * w.perKelvin) * w.sqrtSalinity +
    (-0.10018 + 0.0059415 * w.sqrtSalinity) * w.salinity;
  k.kspAragonite = Math.exp(log10Ksp * Math.LN10);
}

export function kspCalciteMucci1983(w: WaterTerms): number {
  const log10Ksp =
    -171.9065 -
    0.077993 * w.kelvin +
    2839.319 * w.perKelvin +
    71.595 * Math.LOG10E * w.lnKelvin +
    (-0.77712 + 0.0028426 * w.kelvin + 178.34 * w.perKelvin) * w.sqrtSalinity +
    (-0.07711 + 0.0041249 * w.sqrtSalinity) * w.salinity;
  return Math.exp(log10Ksp * Math.LN10);
}
