import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// FREE scale, mol per kg of seawater.
export const ksDickson1990Range = {
  tempC: [0, 45],
  salinityPractical: [5, 45],
  source: 'dickson1990sulfate',
} as const satisfies FittedRange;

export function setKsDickson1990(k: { ks: number }, w: WaterTerms): void {
  const ionic = w.ionicStrengthMolPerKgH2O;
  const root = w.sqrtIonicStrength;
  const lnKsMolal =
    -4276.1 * w.perKelvin +
    141.328 -
    23.093 * w.lnKelvin +
    (-13856 * w.perKelvin + 324.57 - 47.986 * w.lnKelvin) * root +
    (35474 * w.perKelvin - 771.54 + 114.723 * w.lnKelvin) * ionic +
    (-2698 * root + 1776 * ionic) * ionic * w.perKelvin;
  k.ks = Math.exp(lnKsMolal) * w.waterFraction;
}
