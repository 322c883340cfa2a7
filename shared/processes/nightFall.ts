import { oxygenKLaPerH, oxygenSaturationUmolPerKg } from '../seawater/oxygen';
import { seawaterDensityKgPerM3 } from '../seawater/density';

const O2_MG_PER_MMOL = 31.998;

/** Two readings of oxygen in the dark, mg/L, so many hours apart. */
export interface NightFall {
  readonly fromMgPerL: number;
  readonly toMgPerL: number;
  readonly hours: number;
}

/**
 * Oxygen that a tank breathes, mmol/L/day, from how far it falls in the dark; negative where the air
 * brought more than was breathed. `kLaPerH` is the gas exchange (of CO2) meanwhile, 0 with pumps and
 * air off: what is breathed is what fell and what came in, for a fall that relaxes with the air.
 */
export function breathedFromFall(
  { fromMgPerL, toMgPerL, hours }: NightFall,
  {
    kLaPerH,
    tempC,
    salinityPractical,
  }: Readonly<Record<'kLaPerH' | 'tempC' | 'salinityPractical', number>>,
): number {
  const perH = oxygenKLaPerH(kLaPerH, tempC);
  const mmolPerLPerDay = (mgPerLPerH: number) => (mgPerLPerH * 24) / O2_MG_PER_MMOL;
  if (perH * hours < 1e-9) return mmolPerLPerDay((fromMgPerL - toMgPerL) / hours);
  const kgPerL = seawaterDensityKgPerM3({ tempC, salinityPractical }) / 1000;
  const saturated =
    (oxygenSaturationUmolPerKg(tempC, salinityPractical) * kgPerL * O2_MG_PER_MMOL) / 1000;
  const kept = Math.exp(-perH * hours);
  const steady = (toMgPerL - fromMgPerL * kept) / (1 - kept);
  return mmolPerLPerDay(perH * (saturated - steady));
}
