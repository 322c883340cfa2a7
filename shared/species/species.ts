import { molarMassGPerMol, type Element } from '../seawater/atomicMasses';

/**
 * What the water carries, and what it exchanges matter with.
 *
 * `alkalinityWeight` is the equivalents of total alkalinity that one mole brings: the explicit
 * conservative expression of Wolf-Gladrow et al. (2007), so that nobody ever writes an alkalinity
 * term by hand. `molarMassG` is the mass as an oxide component (DIC as CO2; every equivalent of
 * alkalinity adds half an oxide ion), which makes dissolved salt mass a derived number too:
 * Ca(OH)2 counts as CaO and its water goes to the water.
 */
export type TrackedElement = Exclude<Element, 'H' | 'O'>;
/** Atoms in one mole of a thing. */
export type Formula = Partial<Record<Element, number>>;
/** The same without hydrogen and oxygen, which water takes and gives freely. */
export type Composition = Partial<Record<TrackedElement, number>>;

interface Dissolved {
  readonly label: string;
  readonly alkalinityWeight: number;
  readonly molarMassG: number;
  readonly elements: Composition;
}

const tracked = (formula: Formula): Composition =>
  Object.fromEntries(Object.entries(formula).filter(([element]) => !'HO'.includes(element)));

const species = (label: string, alkalinityWeight: number, formula: Formula): Dissolved => ({
  label,
  alkalinityWeight,
  molarMassG: molarMassGPerMol(formula),
  elements: tracked(formula),
});

export const dissolved = {
  Ca: species('calcium', 2, { Ca: 1 }),
  Mg: species('magnesium', 2, { Mg: 1 }),
  Sr: species('strontium', 2, { Sr: 1 }),
  Na: species('sodium', 1, { Na: 1 }),
  K: species('potassium', 1, { K: 1 }),
  TAN: species('total ammonia', 1, { N: 1, H: 4 }),
  Cl: species('chloride', -1, { Cl: 1 }),
  NO3: species('nitrate', -1, { N: 1, O: 3 }),
  PO4: species('total phosphate', -1, { P: 1, O: 4, H: 2 }),
  SO4: species('sulfate', -2, { S: 1, O: 4 }),
  acetate: species('acetate', -1, { C: 2, H: 3, O: 2 }),
  formate: species('formate', -1, { C: 1, H: 1, O: 2 }),
  DIC: species('dissolved inorganic carbon', 0, { C: 1, O: 2 }),
  B: species('total borate', 0, { B: 1, O: 3, H: 3 }),
  untrackedCharge: { label: 'untracked charge', alkalinityWeight: 1, molarMassG: 0, elements: {} },
  untrackedSalt: { label: 'untracked salt, g', alkalinityWeight: 0, molarMassG: 1, elements: {} },
} as const satisfies Record<string, Dissolved>;

/** Where reactions put matter that is not dissolved, with what one mole of it holds. */
export const pools = {
  skeletonCaCO3: { label: 'coral skeleton, CaCO3', elements: { Ca: 1, C: 1 } },
  skeletonMgCO3: { label: 'coral skeleton, MgCO3', elements: { Mg: 1, C: 1 } },
  skeletonSrCO3: { label: 'coral skeleton, SrCO3', elements: { Sr: 1, C: 1 } },
  precipitateCaCO3: { label: 'chalk that fell out by itself', elements: { Ca: 1, C: 1 } },
  airCO2: { label: 'carbon dioxide of the room', elements: { C: 1 } },
  organicC: { label: 'carbon in living and dead matter', elements: { C: 1 } },
  organicN: { label: 'nitrogen in living and dead matter', elements: { N: 1 } },
  organicP: { label: 'phosphorus in living and dead matter', elements: { P: 1 } },
  foodC: { label: 'carbon of the food', elements: { C: 1 } },
  foodN: { label: 'nitrogen of the food', elements: { N: 1 } },
  foodP: { label: 'phosphorus of the food', elements: { P: 1 } },
  reservoirChalk: { label: 'chalk in the reservoir', elements: { Ca: 1, C: 1 } },
  n2: { label: 'nitrogen gas', elements: { N: 2 } },
  reactorMedia: { label: 'gravel of the media reactor', elements: { Ca: 1, C: 1 } },
  reactorCO2: { label: 'carbon dioxide of the media reactor', elements: { C: 1 } },
  reservoirLime: { label: 'solid calcium hydroxide in the reservoir', elements: { Ca: 1 } },
} as const satisfies Record<string, { label: string; elements: Composition }>;

export type DissolvedId = keyof typeof dissolved;
export type PoolId = keyof typeof pools;
/** What a reaction may name. Alkalinity is not among them: it follows. */
export type ReactantId = Exclude<DissolvedId, 'untrackedCharge' | 'untrackedSalt'> | PoolId;

export const dissolvedIds = Object.keys(dissolved) as DissolvedId[];
export const poolIds = Object.keys(pools) as PoolId[];

/** Mass of half an oxide ion: what one equivalent of alkalinity adds to the dissolved mass, g. */
export const HALF_OXIDE_G = molarMassGPerMol({ O: 1 }) / 2;

/** Dissolved mass that one mole of a species stands for, kg (see the note at the top). */
export const saltKgPerMol = (id: DissolvedId): number =>
  id === 'untrackedCharge'
    ? 0
    : (dissolved[id].molarMassG + HALF_OXIDE_G * dissolved[id].alkalinityWeight) / 1000;
