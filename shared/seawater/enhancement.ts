import type { SeawaterConstants } from './constants';

const R_KJ = 8.314e-3;

/** Diffusivity of CO2 in water, m²/s (jahne1987). */
const diffusivityM2PerS = (kelvin: number) => 5019e-9 * Math.exp(-19.51 / (R_KJ * kelvin));

/** Hydration of CO2 by water and by hydroxide, 1/s (johnson1982). */
const hydrationPerS = (kelvin: number, ohMolPerKg: number) =>
  Math.exp(1246.98 - 6.19e4 / kelvin - 183 * Math.log(kelvin)) +
  4.7e7 * Math.exp(-23.2 / (R_KJ * kelvin)) * ohMolPerKg;

/**
 * How many times faster CO2 crosses the surface because it reacts inside the film
 * (hooverBerkshire1969): 1 when the water is well stirred, several times 1 over a still surface.
 * `transferMPerH` is the transfer velocity without reaction.
 */
export function co2Enhancement(
  k: Pick<SeawaterConstants, 'k1' | 'k2' | 'kw'>,
  hTotal: number,
  tempC: number,
  transferMPerH: number,
): number {
  const kelvin = tempC + 273.15;
  const d = diffusivityM2PerS(kelvin);
  const tau = 1 + (hTotal * hTotal) / (k.k1 * k.k2 + k.k1 * hTotal);
  const q = Math.sqrt((hydrationPerS(kelvin, k.kw / hTotal) * tau) / d);
  const film = d / (transferMPerH / 3600);
  return tau / (tau - 1 + Math.tanh(q * film) / (q * film));
}
