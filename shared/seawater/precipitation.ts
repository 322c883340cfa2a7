export type PrecipitationLaw = 'burtonWalter1987' | 'zhongMucci1989';

/**
 * Aragonite laid down on bare solid, µmol CaCO3 per m² and hour: R = k (Ω − 1)^n, nothing at or
 * below Ω 1. burtonWalter1987 from 5 to 37 °C, as published code fits it in temperature;
 * zhongMucci1989 at 25 °C, used as it is at others. An illustration outside Ω 2–10.
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
