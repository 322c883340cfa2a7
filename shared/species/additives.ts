import { say as quantities } from '../words/quantities';
import { saltKgWeights, indexOf, emptyBlock, WATER, alkalinityWeights, type Block } from './block';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import type { DissolvedId, Formula } from './species';

const say = quantities.additives;

interface Additive {
  readonly label: string;
  readonly formula: string;
  readonly molarMassG: number;
  /** Species brought into solution, mol per mol of additive. */
  readonly gives: Partial<Record<DissolvedId, number>>;
  /** What a keeper must know before choosing it. */
  readonly note?: string;
}

const additive = (
  label: string,
  formula: string,
  atoms: Formula,
  gives: Additive['gives'],
  note?: string,
): Additive => ({
  ...{ label, formula, molarMassG: molarMassGPerMol(atoms), gives },
  ...(note === undefined ? {} : { note }),
});

/** Hydrates are weighed with their water. */
export const additives = {
  calciumHydroxide: additive(say.calciumHydroxide, 'Ca(OH)₂', { Ca: 1, O: 2, H: 2 }, { Ca: 1 }),
  sodiumCarbonate: additive(
    say.sodiumCarbonate,
    'Na₂CO₃',
    { Na: 2, C: 1, O: 3 },
    { Na: 2, DIC: 1 },
  ),
  sodiumBicarbonate: additive(
    say.sodiumBicarbonate,
    'NaHCO₃',
    { Na: 1, H: 1, C: 1, O: 3 },
    { Na: 1, DIC: 1 },
  ),
  sodiumHydroxide: additive(say.sodiumHydroxide, 'NaOH', { Na: 1, O: 1, H: 1 }, { Na: 1 }),
  calciumChlorideDihydrate: additive(
    say.calciumChlorideDihydrate,
    'CaCl₂·2H₂O',
    { Ca: 1, Cl: 2, H: 4, O: 2 },
    { Ca: 1, Cl: 2 },
  ),
  calciumChloride: additive(say.calciumChloride, 'CaCl₂', { Ca: 1, Cl: 2 }, { Ca: 1, Cl: 2 }),
  magnesiumChlorideHexahydrate: additive(
    say.magnesiumChlorideHexahydrate,
    'MgCl₂·6H₂O',
    { Mg: 1, Cl: 2, H: 12, O: 6 },
    { Mg: 1, Cl: 2 },
  ),
  magnesiumSulfateHeptahydrate: additive(
    say.magnesiumSulfateHeptahydrate,
    'MgSO₄·7H₂O',
    { Mg: 1, S: 1, O: 11, H: 14 },
    { Mg: 1, SO4: 1 },
  ),
  calciumAcetate: additive(
    say.calciumAcetate,
    'Ca(CH₃COO)₂',
    { Ca: 1, C: 4, H: 6, O: 4 },
    { Ca: 1, acetate: 2 },
    say.afterOxidation,
  ),
  calciumFormate: additive(
    say.calciumFormate,
    'Ca(HCOO)₂',
    { Ca: 1, C: 2, H: 2, O: 4 },
    { Ca: 1, formate: 2 },
    say.afterOxidation,
  ),
} as const satisfies Record<string, Additive>;

export type AdditiveId = keyof typeof additives;
export const additiveIds = Object.keys(additives) as AdditiveId[];

/** Anions that bacteria oxidise: what they held back of alkalinity is there afterwards. */
const oxidised: readonly string[] = ['acetate', 'formate'] satisfies DissolvedId[];

function meqPerG(id: AdditiveId, counts: (species: string) => boolean): number {
  const { gives, molarMassG } = additives[id];
  const eq = Object.entries(gives)
    .filter(([species]) => counts(species))
    .reduce((sum, [species, mol]) => sum + mol * weightOf(species as DissolvedId), 0);
  return (1000 * eq) / molarMassG;
}

const weightOf = (species: DissolvedId): number => alkalinityWeights[indexOf[species]]!;

/** Equivalents of alkalinity that one gram brings as it dissolves, derived from the ions. */
export const alkalinityMeqPerG = (id: AdditiveId): number => meqPerG(id, () => true);

/** The same once bacteria are done with it, which is more for acetate and formate alone. */
export const oxidisedMeqPerG = (id: AdditiveId): number =>
  meqPerG(id, (species) => !oxidised.includes(species));

export const bringsAlkalinity = (id: AdditiveId): boolean => oxidisedMeqPerG(id) > 0;

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
