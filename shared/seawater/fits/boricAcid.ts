import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// Total scale, mol per kg of seawater.
export const kbDickson1990Range = {
  tempC: [0, 45],
  salinityPractical: [5, 45],
  source: 'dickson1990borate',
} as const satisfies FittedRange;

export function setKbDickson1990(k: { kb: number }, w: WaterTerms): void {
  const s = w.salinity;
  const root = w.sqrtSalinity;
  k.kb = Math.exp(
    (-8966.9 - 2890.53 * root + (-77.942 + 1.728 * root - 0.0996 * s) * s) * w.perKelvin +
      148.0248 +
      137.1942 * root +
      1.62142 * s +
      (-24.4344 - 25.085 * root - 0.2474 * s) * w.lnKelvin +
      0.053105 * root * w.kelvin,
  );
}
