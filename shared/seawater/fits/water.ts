import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// Range from memory.
export const kwMillero1995Range = {
  tempC: [0, 45],
  salinityPractical: [0, 45],
  source: 'millero1995',
} as const satisfies FittedRange;

// Trap: this is on the SEAWATER scale (constant 148.9802). The printed 148.9652 is a total-scale
// shortcut, a flat 0.015 lower; here the scales are converted exactly, with kf (see constants).
export function setKwMillero1995(k: { kw: number; hSwsPerHTotal: number }, w: WaterTerms): void {
  const lnKwSws =
    148.9802 -
    13847.26 * w.perKelvin -
    23.6521 * w.lnKelvin +
    (-5.977 + 118.67 * w.perKelvin + 1.0495 * w.lnKelvin) * w.sqrtSalinity -
    0.01615 * w.salinity;
  k.kw = Math.exp(lnKwSws) / k.hSwsPerHTotal;
}
