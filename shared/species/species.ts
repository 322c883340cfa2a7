/**
 * What the water carries, and what it exchanges matter with.
 *
 * `alkalinityWeight` is the equivalents of total alkalinity that one mole brings: the explicit
 * conservative expression of Wolf-Gladrow et al. (2007), so that nobody ever writes an alkalinity
 * term by hand. `molarMassG` is the mass as an oxide component (DIC as CO2; every equivalent of
 * alkalinity adds half an oxide ion), which makes dissolved salt mass a derived number too:
 * Ca(OH)2 counts as CaO and its water goes to the water.
 */
export type Element = 'Ca' | 'Mg' | 'Sr' | 'Na' | 'K' | 'Cl' | 'S' | 'B' | 'C' | 'N' | 'P';
export type Composition = Partial<Record<Element, number>>;

interface Dissolved {
  readonly label: string;
  readonly alkalinityWeight: number;
  readonly molarMassG: number;
  readonly elements: Composition;
}

const species = (
  label: string,
  alkalinityWeight: number,
  molarMassG: number,
  elements: Composition,
): Dissolved => ({ label, alkalinityWeight, molarMassG, elements });

/** Atomic masses: IUPAC 2021 abridged standard atomic weights (from memory). */
export const dissolved = {
  Ca: species('calcium', 2, 40.078, { Ca: 1 }),
  Mg: species('magnesium', 2, 24.305, { Mg: 1 }),
  Sr: species('strontium', 2, 87.62, { Sr: 1 }),
  Na: species('sodium', 1, 22.99, { Na: 1 }),
  K: species('potassium', 1, 39.098, { K: 1 }),
  TAN: species('total ammonia', 1, 18.039, { N: 1 }),
  Cl: species('chloride', -1, 35.453, { Cl: 1 }),
  NO3: species('nitrate', -1, 62.004, { N: 1 }),
  PO4: species('total phosphate', -1, 96.986, { P: 1 }),
  SO4: species('sulfate', -2, 96.06, { S: 1 }),
  acetate: species('acetate', -1, 59.044, { C: 2 }),
  formate: species('formate', -1, 45.017, { C: 1 }),
  DIC: species('dissolved inorganic carbon', 0, 44.009, { C: 1 }),
  B: species('total borate', 0, 61.83, { B: 1 }),
  untrackedCharge: species('untracked charge', 1, 0, {}),
  untrackedSalt: species('untracked salt, g', 0, 1, {}),
} as const satisfies Record<string, Dissolved>;

/** Where reactions put matter that is not dissolved, with what one mole of it holds. */
export const pools = {
  skeletonCaCO3: { label: 'coral skeleton, CaCO3', elements: { Ca: 1, C: 1 } },
  airCO2: { label: 'carbon dioxide of the room', elements: { C: 1 } },
  organicC: { label: 'carbon in living and dead matter', elements: { C: 1 } },
  organicN: { label: 'nitrogen in living and dead matter', elements: { N: 1 } },
  organicP: { label: 'phosphorus in living and dead matter', elements: { P: 1 } },
  foodC: { label: 'carbon of the food', elements: { C: 1 } },
  foodN: { label: 'nitrogen of the food', elements: { N: 1 } },
  foodP: { label: 'phosphorus of the food', elements: { P: 1 } },
  reservoirLime: { label: 'solid calcium hydroxide in the reservoir', elements: { Ca: 1 } },
} as const satisfies Record<string, { label: string; elements: Composition }>;

export type DissolvedId = keyof typeof dissolved;
export type PoolId = keyof typeof pools;
/** What a reaction may name. Alkalinity is not among them: it follows. */
export type ReactantId = Exclude<DissolvedId, 'untrackedCharge' | 'untrackedSalt'> | PoolId;

export const dissolvedIds = Object.keys(dissolved) as DissolvedId[];
export const poolIds = Object.keys(pools) as PoolId[];

/** Mass of half an oxide ion: what one equivalent of alkalinity adds to the dissolved mass, g. */
export const HALF_OXIDE_G = 15.999 / 2;

/** Dissolved mass that one mole of a species stands for, kg (see the note at the top). */
export const saltKgPerMol = (id: DissolvedId): number =>
  id === 'untrackedCharge'
    ? 0
    : (dissolved[id].molarMassG + HALF_OXIDE_G * dissolved[id].alkalinityWeight) / 1000;
