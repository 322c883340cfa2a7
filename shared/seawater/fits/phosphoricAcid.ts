import type { FittedRange } from './fittedRange';
import type { WaterTerms } from './waterTerms';

// The fits are on the SEAWATER scale; the printed total-scale constants are a flat 0.015 lower, here
// the scales are converted exactly. mol per kg of seawater. Range from memory.
export const kpYaoMillero1995Range = {
  tempC: [0, 45],
  salinityPractical: [0, 45],
  source: 'yaoMillero1995',
} as const satisfies FittedRange;

export interface PhosphoricAcid {
  kp1: number;
  kp2: number;
  kp3: number;
  hSwsPerHTotal: number;
}

export function setKpYaoMillero1995(k: PhosphoricAcid, w: WaterTerms): void {
  const { perKelvin, lnKelvin, salinity, sqrtSalinity } = w;
  const lnKp1Sws =
    -4576.752 * perKelvin +
    115.54 -
    18.453 * lnKelvin +
    (-106.736 * perKelvin + 0.69171) * sqrtSalinity +
    (-0.65643 * perKelvin - 0.01844) * salinity;
  const lnKp2Sws =
    -8814.715 * perKelvin +
    172.1033 -
    27.927 * lnKelvin +
    (-160.34 * perKelvin + 1.3566) * sqrtSalinity +
    (0.37335 * perKelvin - 0.05778) * salinity;
  const lnKp3Sws =
    -3070.75 * perKelvin -
    18.126 +
    (17.27039 * perKelvin + 2.81197) * sqrtSalinity +
    (-44.99486 * perKelvin - 0.09984) * salinity;
  const swsToTotal = 1 / k.hSwsPerHTotal;
  k.kp1 = Math.exp(lnKp1Sws) * swsToTotal;
  k.kp2 = Math.exp(lnKp2Sws) * swsToTotal;
  k.kp3 = Math.exp(lnKp3Sws) * swsToTotal;
}
