import type { FittedRange } from './fits/fittedRange';
import { requireBetween } from './require';
import { rootBetween } from './rootBetween';

export const conductivityPss78Range = {
  tempC: [-2, 35],
  salinityPractical: [2, 42],
  source: 'unesco1983',
} as const satisfies FittedRange;

/** Conductivity of S 35 water at 15 °C (IPTS-68): PSS-78 itself fixes only ratios to it. */
const standardMsPerCm = 42.914;

// PSS-78 at 0 dbar (unesco1983). Trap: the fit wants IPTS-68; tempC is ITS-90.
function ratioOfStandard(t: number): number {
  return 0.6766097 + (2.00564e-2 + (1.104259e-4 + (-6.9698e-7 + 1.0031e-9 * t) * t) * t) * t;
}

function salinityFromRatio(ratio: number, t: number): number {
  const r = Math.sqrt(ratio);
  const at15 = 0.008 + (-0.1692 + (25.3851 + (14.0941 + (-7.0261 + 2.7081 * r) * r) * r) * r) * r;
  const departure =
    0.0005 + (-0.0056 + (-0.0066 + (-0.0375 + (0.0636 - 0.0144 * r) * r) * r) * r) * r;
  return at15 + (departure * (t - 15)) / (1 + 0.0162 * (t - 15));
}

export function salinityFromConductivity(conductivityMsPerCm: number, tempC: number): number {
  requireBetween('conductivityMsPerCm', conductivityMsPerCm, 0, 200);
  requireBetween('tempC', tempC, -5, 60);
  const t = tempC * 1.00024;
  return salinityFromRatio(conductivityMsPerCm / standardMsPerCm / ratioOfStandard(t), t);
}

export function conductivityMsPerCm(tempC: number, salinityPractical: number): number {
  requireBetween('salinityPractical', salinityPractical, 0.1, 100);
  requireBetween('tempC', tempC, -5, 60);
  const t = tempC * 1.00024;
  const ratio = rootBetween(0, 4, (x) => salinityFromRatio(x, t) - salinityPractical);
  return ratio * ratioOfStandard(t) * standardMsPerCm;
}
