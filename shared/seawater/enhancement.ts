import type { SeawaterConstants } from './constants';

const R_KJ = 8.314e-3;

/**
 * What CO2 does in the film at the surface, which only the temperature moves: kept until it does.
 * Diffusivity in water, m²/s (jahne1987); hydration by water, 1/s, and by hydroxide, kg/mol/s
 * (johnson1982).
 */
export class Film {
  diffusivityM2PerS = NaN;
  hydrationPerS = NaN;
  hydroxylationPerS = NaN;
  private tempC = NaN;

  at(tempC: number): this {
    if (tempC === this.tempC) return this;
    const kelvin = tempC + 273.15;
    this.tempC = tempC;
    this.diffusivityM2PerS = 5019e-9 * Math.exp(-19.51 / (R_KJ * kelvin));
    this.hydrationPerS = Math.exp(1246.98 - 6.19e4 / kelvin - 183 * Math.log(kelvin));
    this.hydroxylationPerS = 4.7e7 * Math.exp(-23.2 / (R_KJ * kelvin));
    return this;
  }
}

/**
 * How many times faster CO2 crosses the surface because it reacts inside the film
 * (hooverBerkshire1969): 1 when the water is well stirred, several times 1 over a still surface.
 * `transferMPerH` is the transfer velocity without reaction.
 */
export function co2Enhancement(
  k: Pick<SeawaterConstants, 'k1' | 'k2' | 'kw'>,
  hTotal: number,
  { diffusivityM2PerS: d, hydrationPerS, hydroxylationPerS }: Film,
  transferMPerH: number,
): number {
  const tau = 1 + (hTotal * hTotal) / (k.k1 * k.k2 + k.k1 * hTotal);
  const reactsPerS = hydrationPerS + hydroxylationPerS * (k.kw / hTotal);
  const q = Math.sqrt((reactsPerS * tau) / d);
  const film = d / (transferMPerH / 3600);
  return tau / (tau - 1 + Math.tanh(q * film) / (q * film));
}
