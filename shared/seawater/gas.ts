import type { FittedRange } from './fits/fittedRange';

export const waterVapourWeissPrice1980Range = {
  tempC: [0, 40],
  salinityPractical: [0, 40],
  source: 'weissPrice1980',
} as const satisfies FittedRange;

/** Water vapour over seawater at saturation (weissPrice1980), in atm. */
export function waterVapourPressureAtm(tempC: number, salinityPractical: number): number {
  const hundreds = (tempC + 273.15) / 100;
  return Math.exp(
    24.4543 - 67.4509 / hundreds - 4.8489 * Math.log(hundreds) - 0.000544 * salinityPractical,
  );
}

/** pCO2 of room air at 1 atm once it is wet, as it is where it meets the water. */
export function pco2WetUatm(ppmDry: number, tempC: number, salinityPractical: number): number {
  return ppmDry * (1 - waterVapourPressureAtm(tempC, salinityPractical));
}

export function ppmDryFromPco2Uatm(
  pco2Uatm: number,
  tempC: number,
  salinityPractical: number,
): number {
  return pco2Uatm / (1 - waterVapourPressureAtm(tempC, salinityPractical));
}

// The Schmidt fits are for S 35, and are used as they are at other salinities.
export const schmidtWanninkhof2014Range = {
  tempC: [-2, 40],
  salinityPractical: [35, 35],
  source: 'wanninkhof2014',
} as const satisfies FittedRange;

export function schmidtCo2(tempC: number): number {
  const t = tempC;
  return 2116.8 + (-136.25 + (4.7353 + (-0.092307 + 0.0007555 * t) * t) * t) * t;
}

export function schmidtO2(tempC: number): number {
  const t = tempC;
  return 1920.4 + (-135.6 + (5.2122 + (-0.10939 + 0.00093777 * t) * t) * t) * t;
}

/** Transfer velocity of CO2 over that of O2 in the same stirred water: k goes as Sc^-1/2. */
export function co2PerO2TransferVelocity(tempC: number): number {
  return Math.sqrt(schmidtO2(tempC) / schmidtCo2(tempC));
}
