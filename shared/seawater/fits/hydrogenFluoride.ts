import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// TOTAL scale (as dickson2007 reads it), mol per kg of seawater.
export const kfPerezFraga1987Range = {
  tempC: [9, 33],
  salinityPractical: [10, 40],
  source: 'perezFraga1987',
} as const satisfies FittedRange;

export function setKfPerezFraga1987(k: { kf: number }, w: WaterTerms): void {
  k.kf = Math.exp(874 * w.perKelvin - 9.68 + 0.111 * w.sqrtSalinity);
}
