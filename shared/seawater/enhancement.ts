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

/** How many times faster CO2 crosses the surface, and how that changes with logarithms. */
export interface Enhancement {
  times: number;
  /** Of [H+]. */
  timesPerLnH: number;
  /** Of the transfer velocity without reaction. */
  timesPerLnTransfer: number;
}

/**
 * How many times faster CO2 crosses the surface because it reacts inside the film
 * (hooverBerkshire1969): 1 when the water is well stirred, several times 1 over a still surface.
 * `transferMPerH` is the transfer velocity without reaction. Written into `into`.
 */
export function co2Enhancement<Into extends Enhancement>(
  { k1, k2, kw }: Pick<SeawaterConstants, 'k1' | 'k2' | 'kw'>,
  hTotal: number,
  { diffusivityM2PerS: d, hydrationPerS, hydroxylationPerS }: Film,
  transferMPerH: number,
  into: Into,
): Into {
  const x = k1 * hTotal;
  const beyond = (hTotal * hTotal) / (k1 * k2 + x);
  const tau = 1 + beyond;
  const byHydroxide = hydroxylationPerS * (kw / hTotal);
  const reactsPerS = hydrationPerS + byHydroxide;
  const z = (Math.sqrt((reactsPerS * tau) / d) * d) / (transferMPerH / 3600);
  const tanh = Math.tanh(z);
  const filled = tanh / z;
  const below = beyond + filled;
  const tauPerLnH = beyond * (2 - x / (k1 * k2 + x));
  const lnZPerLnH = (tauPerLnH / tau - byHydroxide / reactsPerS) / 2;
  const filledPerLnZ = 1 - tanh * tanh - filled;
  const filledPerLnH = filledPerLnZ * lnZPerLnH;
  into.times = tau / below;
  into.timesPerLnH = (tauPerLnH * (filled - 1) - tau * filledPerLnH) / (below * below);
  into.timesPerLnTransfer = (tau * filledPerLnZ) / (below * below);
  return into;
}
