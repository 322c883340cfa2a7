import { termsOf, type Reaction } from './reaction';
import type { DissolvedId, PoolId } from './species';

/** mol of oxygen for one mol of a thing; what is not named takes none. */
export type OxygenDemand = Readonly<Partial<Record<DissolvedId | PoolId, number>>>;

/**
 * Oxygen that a mole takes until it is carbon dioxide, nitrate and water: a quarter of the
 * electrons that it gives. Free oxygen is the opposite of a demand. What any reaction gives or
 * takes of it is the demand that it makes or removes, so that nobody writes oxygen by hand either;
 * summed over all accounts it never changes.
 *
 * `perCarbon` is that of living matter and food: its photosynthetic quotient, and one over its
 * respiratory quotient. (Matter that takes more than 1 leaves a little for oxygen to do when
 * nitrate is turned to gas, whose reaction is written for carbohydrate.)
 */
export const oxygenDemand = (perCarbon: number): OxygenDemand => ({
  organicC: perCarbon,
  foodC: perCarbon,
  unseenOrganicC: perCarbon,
  acetate: 2,
  formate: 0.5,
  TAN: 2,
  foodN: 2,
  organicN: 2,
  n2: 2.5,
  O2: -1,
  airO2: -1,
  oxygenDebt: 1,
});

/** mol of oxygen that a mole of a reaction gives to the water (+) or takes from it (−). */
export const oxygenOf = (reaction: Reaction, demand: OxygenDemand): number =>
  termsOf(reaction).reduce((sum, [id, moles]) => sum + moles * (demand[id] ?? 0), 0);
