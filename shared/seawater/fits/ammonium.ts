import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// Total scale. Range from memory.
export const kNh4CleggWhitfield1995Range = {
  tempC: [-2, 40],
  salinityPractical: [0, 40],
  source: 'cleggWhitfield1995',
} as const satisfies FittedRange;

export function setKNh4CleggWhitfield1995(k: { kNh4: number }, w: WaterTerms): void {
  const rootKelvin = Math.sqrt(w.kelvin);
  const s = w.salinity;
  const root = w.sqrtSalinity;
  const quarter = Math.sqrt(root);
  const pkMolal =
    9.244605 -
    2729.33 * (1 / 298.15 - w.perKelvin) +
    (0.04203362 - 11.24742 * w.perKelvin) * quarter +
    (-13.6416 + 1.176949 * rootKelvin - 0.02860785 * w.kelvin + 545.4834 * w.perKelvin) * root +
    (-0.1462507 + 0.0090226468 * rootKelvin - 0.0001471361 * w.kelvin + 10.5425 * w.perKelvin) *
      s *
      root +
    (0.004669309 - 0.0001691742 * rootKelvin - 0.5677934 * w.perKelvin) * s * s +
    (-2.354039e-5 + 0.009698623 * w.perKelvin) * s * s * root;
  // Trap: the fit is per kg of WATER, 3.5 % more than per kg of seawater at S 35.
  k.kNh4 = Math.exp(-pkMolal * Math.LN10) * w.waterFraction;
}
