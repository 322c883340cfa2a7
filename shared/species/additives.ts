import { saltKgWeights, indexOf, emptyBlock, WATER, alkalinityWeights, type Block } from './block';
import type { DissolvedId } from './species';

interface Additive {
  readonly label: string;
  readonly formula: string;
  readonly molarMassG: number;
  /** Species brought into solution, mol per mol of additive. */
  readonly gives: Partial<Record<DissolvedId, number>>;
}

/** Molar masses: from the atomic masses beside the species; hydrates with their water. */
export const additives = {
  calciumHydroxide: {
    label: 'calcium hydroxide',
    formula: 'Ca(OH)₂',
    molarMassG: 74.092,
    gives: { Ca: 1 },
  },
  sodiumCarbonate: {
    label: 'sodium carbonate (soda ash)',
    formula: 'Na₂CO₃',
    molarMassG: 105.988,
    gives: { Na: 2, DIC: 1 },
  },
  sodiumBicarbonate: {
    label: 'sodium bicarbonate',
    formula: 'NaHCO₃',
    molarMassG: 84.006,
    gives: { Na: 1, DIC: 1 },
  },
  sodiumHydroxide: {
    label: 'sodium hydroxide',
    formula: 'NaOH',
    molarMassG: 39.997,
    gives: { Na: 1 },
  },
  calciumChlorideDihydrate: {
    label: 'calcium chloride dihydrate',
    formula: 'CaCl₂·2H₂O',
    molarMassG: 147.014,
    gives: { Ca: 1, Cl: 2 },
  },
  calciumChloride: {
    label: 'calcium chloride, dry',
    formula: 'CaCl₂',
    molarMassG: 110.984,
    gives: { Ca: 1, Cl: 2 },
  },
  magnesiumChlorideHexahydrate: {
    label: 'magnesium chloride hexahydrate',
    formula: 'MgCl₂·6H₂O',
    molarMassG: 203.301,
    gives: { Mg: 1, Cl: 2 },
  },
  magnesiumSulfateHeptahydrate: {
    label: 'magnesium sulfate heptahydrate',
    formula: 'MgSO₄·7H₂O',
    molarMassG: 246.47,
    gives: { Mg: 1, SO4: 1 },
  },
} as const satisfies Record<string, Additive>;

export type AdditiveId = keyof typeof additives;
export const additiveIds = Object.keys(additives) as AdditiveId[];

/** Equivalents of alkalinity in one gram, derived from the ions. */
export function alkalinityMeqPerG(id: AdditiveId): number {
  const { gives, molarMassG } = additives[id];
  const eq = Object.entries(gives).reduce(
    (sum, [species, moles]) => sum + moles * alkalinityWeights[indexOf[species as DissolvedId]]!,
    0,
  );
  return (1000 * eq) / molarMassG;
}

/** What a weighed amount brings when it has dissolved: its ions, and its bound water as water. */
export function dissolve(id: AdditiveId, grams: number): Block {
  const block = emptyBlock();
  const mol = grams / additives[id].molarMassG;
  let saltMassKg = 0;
  for (const [species, moles] of Object.entries(additives[id].gives)) {
    const index = indexOf[species as DissolvedId];
    block[index] = moles * mol;
    saltMassKg += saltKgWeights[index]! * moles * mol;
  }
  block[WATER] = grams / 1000 - saltMassKg;
  return block;
}
