/** Ranges in which the rates were measured; outside, an illustration only. */
export const burtonWalter1987Range = { tempC: [5, 37], source: 'burtonWalter1987' } as const;
export const zhongMucci1989Range = { tempC: [25, 25], source: 'zhongMucci1989' } as const;

export type PrecipitationLaw = 'burtonWalter1987' | 'zhongMucci1989';

/**
 * Aragonite laid down on bare solid, µmol CaCO3 per m² and hour: R = k (Ω − 1)^n, nothing at or
 * below Ω 1. Burton & Walter 1987 as fitted in temperature by published code; Zhong & Mucci 1989
 * at 25 °C.
 */
export function precipitationUmolPerM2PerH(
  omegaAragonite: number,
  tempC: number,
  law: PrecipitationLaw = 'burtonWalter1987',
): number {
  if (omegaAragonite <= 1) return 0;
  if (law === 'zhongMucci1989') return 12.9 * (omegaAragonite - 1) ** 2.26;
  const k = -0.0177 * tempC * tempC + 1.4697 * tempC + 14.893;
  const n = 0.0628 * tempC + 0.0985;
  return k * (omegaAragonite - 1) ** n;
}
