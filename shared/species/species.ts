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
  readonly alkalinityWeight: number;
  readonly molarMassG: number;
  readonly elements: Composition;
}

const tracked = (formula: Formula): Composition =>
  Object.fromEntries(Object.entries(formula).filter(([element]) => !'HO'.includes(element)));

const species = (alkalinityWeight: number, formula: Formula): Dissolved => ({
  alkalinityWeight,
  molarMassG: molarMassGPerMol(formula),
  elements: tracked(formula),
});

export const dissolved = {
  Ca: species(2, { Ca: 1 }),
  Mg: species(2, { Mg: 1 }),
  Sr: species(2, { Sr: 1 }),
  Na: species(1, { Na: 1 }),
  K: species(1, { K: 1 }),
  TAN: species(1, { N: 1, H: 4 }),
  Cl: species(-1, { Cl: 1 }),
  NO3: species(-1, { N: 1, O: 3 }),
  PO4: species(-1, { P: 1, O: 4, H: 2 }),
  SO4: species(-2, { S: 1, O: 4 }),
  acetate: species(-1, { C: 2, H: 3, O: 2 }),
  formate: species(-1, { C: 1, H: 1, O: 2 }),
  DIC: species(0, { C: 1, O: 2 }),
  B: species(0, { B: 1, O: 3, H: 3 }),
  // A dissolved gas that weighs a millionth of the salt, and that no conductivity sees.
  O2: { alkalinityWeight: 0, molarMassG: 0, elements: {} },
  untrackedCharge: { alkalinityWeight: 1, molarMassG: 0, elements: {} },
  untrackedSalt: { alkalinityWeight: 0, molarMassG: 1, elements: {} },
} as const satisfies Record<string, Dissolved>;

/** What the engine asks of a pool, whatever it is called. */
export type PoolRole =
  /** What corals have laid down. */
  | 'skeleton'
  /** Chalk that has fallen out in the tank, on which more falls. */
  | 'fallenChalk'
  /** The room's carbon dioxide: whatever draws on it is where the water meets the air. */
  | 'air'
  /** The room's oxygen, and what was asked of the water in vain: the engine books both itself. */
  | 'airOxygen'
  | 'oxygenOwed';

interface Pool {
  readonly elements: Composition;
  readonly role?: PoolRole;
  /** Where somebody weighs it. */
  readonly molarMassG?: number;
}

const weighed = (role: PoolRole, formula: Formula) => ({
  ...{ role, elements: tracked(formula), molarMassG: molarMassGPerMol(formula) },
});

/** Where reactions put matter that is not dissolved, with what one mole of it holds. */
export const pools = {
  skeletonCaCO3: weighed('skeleton', { Ca: 1, C: 1, O: 3 }),
  skeletonMgCO3: weighed('skeleton', { Mg: 1, C: 1, O: 3 }),
  skeletonSrCO3: weighed('skeleton', { Sr: 1, C: 1, O: 3 }),
  precipitateCaCO3: { elements: { Ca: 1, C: 1 }, role: 'fallenChalk' },
  airCO2: { elements: { C: 1 }, role: 'air' },
  organicC: { elements: { C: 1 } },
  organicN: { elements: { N: 1 } },
  organicP: { elements: { P: 1 } },
  foodC: { elements: { C: 1 } },
  foodN: { elements: { N: 1 } },
  foodP: { elements: { P: 1 } },
  reservoirChalk: { elements: { Ca: 1, C: 1 } },
  n2: { elements: { N: 2 } },
  reactorMedia: { elements: { Ca: 1, C: 1 } },
  reactorCO2: { elements: { C: 1 } },
  reservoirLime: { elements: { Ca: 1 } },
  airO2: { elements: {}, role: 'airOxygen' },
  oxygenDebt: { elements: {}, role: 'oxygenOwed' },
  unseenOrganicC: { elements: { C: 1 } },
  unseenCO2: { elements: { C: 1 } },
} as const satisfies Record<string, Pool>;

export type DissolvedId = keyof typeof dissolved;
export type PoolId = keyof typeof pools;
/** What a reaction may name. Neither alkalinity nor oxygen is among them: both follow. */
export type ReactantId =
  | Exclude<DissolvedId, 'untrackedCharge' | 'untrackedSalt' | 'O2'>
  | Exclude<PoolId, 'airO2' | 'oxygenDebt'>;

export const dissolvedIds = Object.keys(dissolved) as DissolvedId[];
export const poolIds = Object.keys(pools) as PoolId[];

const poolOf = (id: PoolId): Pool => pools[id];
export const poolsWith = (role: PoolRole): PoolId[] =>
  poolIds.filter((id) => poolOf(id).role === role);
/** Mass of one mole of what lies in a pool, g; 0 where nobody weighs it. */
export const poolMassG = (id: PoolId): number => poolOf(id).molarMassG ?? 0;

/** Mass of half an oxide ion: what one equivalent of alkalinity adds to the dissolved mass, g. */
export const HALF_OXIDE_G = molarMassGPerMol({ O: 1 }) / 2;

/** Dissolved mass that one mole of a species stands for, kg (see the note at the top). */
export const saltKgPerMol = (id: DissolvedId): number =>
  id === 'untrackedCharge'
    ? 0
    : (dissolved[id].molarMassG + HALF_OXIDE_G * dissolved[id].alkalinityWeight) / 1000;
