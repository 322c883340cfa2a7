import type { SeawaterConstants } from '../seawater/constants';
import type { Block } from '../species/block';

/** What a process or a device may look at: the tank at one instant. Written by the engine only. */
export interface View {
  readonly timeH: number;
  readonly tempC: number;
  readonly salinityPractical: number;
  readonly volumeL: number;
  readonly solutionKg: number;
  /** mol of each dissolved species, then kg of water, in the order of `indexOf`. */
  readonly amounts: Block;
  readonly alkalinityMolPerKg: number;
  readonly dicMolPerKg: number;
  readonly phTotal: number;
  /** Hydrogen ions on the total scale, mol/kg. */
  readonly hTotal: number;
  /** Equilibrium constants of this water now. */
  readonly constants: SeawaterConstants;
  readonly pco2Uatm: number;
  readonly omegaAragonite: number;
  /** Solubility of CO2, mol per kg of seawater and atmosphere. */
  readonly k0: number;
  /** Partial pressure of CO2 in the moist air of the room, µatm. */
  readonly pco2AirUatm: number;
  /** Chalk that has fallen out by itself so far, mol. */
  readonly precipitateMol: number;
  /** Light of the lamps: its mean while they are on is 1; 0 when they are off. */
  readonly light: number;
  /** Gas exchange as pumps and skimmer drive it now, 1/h. */
  readonly kLaPerH: number;
  /** Whether there is mains electricity. */
  readonly powered: boolean;
}
