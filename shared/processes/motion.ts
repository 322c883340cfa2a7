import type { SeawaterConstants } from '../seawater/constants';
import type { Block } from '../species/block';

/** So much warmer is near enough for a slope, and far enough from the solver's last digits, °C. */
export const WARMER_C = 0.05;

/**
 * How the tank moves: what each quantity of the view gains in an hour. Written by the engine only.
 * Salinity moves constants and density by parts in ten thousand an hour: that is left out.
 */
export interface Motion {
  readonly tempC: number;
  readonly solutionKg: number;
  readonly volumeL: number;
  /** mol/h of each dissolved species, then kg/h of water, in the order of `indexOf`. */
  readonly amounts: Block;
  readonly alkalinityMolPerKg: number;
  readonly dicMolPerKg: number;
  /** Of the natural logarithm of [H+]. */
  readonly lnHTotal: number;
  readonly pco2Uatm: number;
  readonly omegaAragonite: number;
  readonly k0: number;
  readonly pco2AirUatm: number;
  readonly precipitateMol: number;
  readonly light: number;
  /** Constants of this water `WARMER_C` warmer; kept only while the temperature moves. */
  readonly warmer: SeawaterConstants;
}
