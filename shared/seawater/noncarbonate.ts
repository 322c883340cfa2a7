import type { SeawaterConstants } from './constants';

/** Totals in mol per kg of seawater, and what the function below leaves behind. */
export interface NoncarbonateWater {
  k: SeawaterConstants;
  borate: number;
  sulfate: number;
  fluoride: number;
  phosphate: number;
  ammonia: number;
  noncarbonateMolPerKg: number;
  noncarbonateSlope: number;
}

/** Alkalinity of everything but carbonate at [H+] on the total scale, and its slope per unit of ln h. */
export function setNoncarbonate(water: NoncarbonateWater, h: number): void {
  const { kb, kw, ks, kf, hTotalPerHFree } = water.k;
  const hydroxide = kw / h;
  const hFree = h / hTotalPerHFree;
  const perBorate = 1 / (h + kb);
  const perSulfate = 1 / (hFree + ks);
  const perFluoride = 1 / (h + kf);
  const borate = water.borate * kb * perBorate;
  const bisulfate = water.sulfate * hFree * perSulfate;
  const fluoride = water.fluoride * h * perFluoride;
  let sum = borate + hydroxide - hFree - bisulfate - fluoride;
  let slope =
    -borate * h * perBorate -
    hydroxide -
    hFree -
    bisulfate * ks * perSulfate -
    fluoride * kf * perFluoride;
  if (water.ammonia !== 0) {
    const { kNh4 } = water.k;
    const perAmmonia = 1 / (h + kNh4);
    const nh3 = water.ammonia * kNh4 * perAmmonia;
    sum += nh3;
    slope -= nh3 * h * perAmmonia;
  }
  if (water.phosphate !== 0) {
    // Shares of H3PO4 (cube), H2PO4, HPO4, PO4: alkalinity counts them as -1, 0, 1, 2.
    const { kp1, kp2, kp3 } = water.k;
    const cube = h * h * h;
    const h2po4 = kp1 * h * h;
    const hpo4 = kp1 * kp2 * h;
    const po4 = kp1 * kp2 * kp3;
    const perSum = 1 / (cube + h2po4 + hpo4 + po4);
    const charge = (hpo4 + 2 * po4 - cube) * perSum;
    sum += water.phosphate * charge;
    slope += water.phosphate * (hpo4 - 3 * cube - charge * (3 * cube + 2 * h2po4 + hpo4)) * perSum;
  }
  water.noncarbonateMolPerKg = sum;
  water.noncarbonateSlope = slope;
}
