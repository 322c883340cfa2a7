import { termsOf, type Reaction } from './reaction';
import type { DissolvedId, PoolId } from './species';

/** mol of oxygen for one mol of a thing. */
export type OxygenDemand = Readonly<Record<DissolvedId | PoolId, number>>;

/** What oxygen finds nothing to do on. */
const takesNone = {
  ...{ Ca: 0, Mg: 0, Sr: 0, Na: 0, K: 0, Cl: 0, B: 0, untrackedCharge: 0, untrackedSalt: 0 },
  ...{ NO3: 0, PO4: 0, SO4: 0, DIC: 0, airCO2: 0, reactorCO2: 0, unseenCO2: 0 },
  ...{ organicP: 0, foodP: 0, reservoirLime: 0, reservoirChalk: 0, reactorMedia: 0 },
  ...{ skeletonCaCO3: 0, skeletonMgCO3: 0, skeletonSrCO3: 0, precipitateCaCO3: 0 },
};

/**
 * Oxygen that a mole takes until it is carbon dioxide, nitrate, sulfate and water: a quarter of the
 * electrons that it gives. Free oxygen is the opposite of a demand. What any reaction gives or
 * takes of it is the demand that it makes or removes, so that nobody writes oxygen by hand either;
 * summed over all accounts it never changes. So no closure would see one that is left out: every
 * species and pool is named.
 *
 * `perCarbon` is that of living matter and food: its photosynthetic quotient, and one over its
 * respiratory quotient. (Matter that takes more than 1 leaves a little for oxygen to do when
 * nitrate is turned to gas, whose reaction is written for carbohydrate.)
 */
export const oxygenDemand = (perCarbon: number): OxygenDemand => ({
  ...takesNone,
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
  termsOf(reaction).reduce((sum, [id, moles]) => sum + moles * demand[id], 0);
