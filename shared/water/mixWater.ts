import { molarMassGPerMol } from '../seawater/atomicMasses';
import { umolPerKgFromDkh } from '../seawater/alkalinity';
import { densityKgPerM3 } from '../seawater/density';
import { oxygenSaturationUmolPerKg } from '../seawater/oxygen';
import { phTotalFromPhNbs } from '../seawater/phNbs';
import { CarbonateSolver } from '../seawater/solver';
import { alkalinityEq, emptyBlock, indexOf, saltKg, WATER, type Block } from '../species/block';
import { dissolved, saltKgPerMol, type DissolvedId } from '../species/species';
import { referenceMolPerKg, SALT_G_PER_KG_PER_PSU } from './referenceSeawater';
import { totalBorateMolPerKg, totalSulfateMolPerKg } from '../seawater/totals';

export type Carbon = { readonly pco2Uatm: number } | { readonly phNbs: number };

/** A body of saltwater as a keeper describes it. */
export interface WaterRecipe {
  readonly volumeL: number;
  readonly tempC: number;
  readonly salinityPractical: number;
  readonly alkalinityDkh: number;
  readonly calciumMgPerL: number;
  readonly magnesiumMgPerL: number;
  readonly nitrateMgPerL?: number;
  readonly phosphateMgPerL?: number;
  readonly ammoniaMgPerL?: number;
  readonly carbon: Carbon;
}

/** Ammonia is typed as mg of NH3, phosphate as mg of PO4: what tests print. */
const TYPED_MOLAR_MASS_G = {
  nitrate: molarMassGPerMol({ N: 1, O: 3 }),
  phosphate: molarMassGPerMol({ P: 1, O: 4 }),
  ammonia: molarMassGPerMol({ N: 1, H: 3 }),
};

function dicMolPerKg(block: Block, kg: number, recipe: WaterRecipe, alkalinity: number): number {
  const solver = new CarbonateSolver();
  solver.setConditions(recipe.tempC, recipe.salinityPractical);
  solver.setTotalsFromSalinity(recipe.salinityPractical);
  solver.phosphate = block[indexOf.PO4]! / kg;
  solver.ammonia = block[indexOf.TAN]! / kg;
  return 'pco2Uatm' in recipe.carbon
    ? solver.dicFromPco2(alkalinity, recipe.carbon.pco2Uatm)
    : solver.dicFromPh(alkalinity, phTotalFromPhNbs(recipe.carbon.phNbs, solver.k));
}

/**
 * The amounts in a body of water. What the tracked ions leave open to the measured dKH and
 * salinity becomes the untracked charge and salt, set here once and never again. Its oxygen is what
 * the air holds it at.
 */
export function mixWater(recipe: WaterRecipe): Block {
  const { volumeL, tempC, salinityPractical, calciumMgPerL, magnesiumMgPerL } = recipe;
  const block = emptyBlock();
  const kg = (volumeL * densityKgPerM3(tempC, salinityPractical)) / 1000;
  const set = (id: DissolvedId, mol: number) => (block[indexOf[id]] = mol);
  for (const [id, molPerKg] of Object.entries(referenceMolPerKg)) {
    set(id as DissolvedId, molPerKg * (salinityPractical / 35) * kg);
  }
  const fromMg = (mgPerL: number, molarMassG: number) => ((mgPerL / 1000) * volumeL) / molarMassG;
  set('Ca', fromMg(calciumMgPerL, dissolved.Ca.molarMassG));
  set('Mg', fromMg(magnesiumMgPerL, dissolved.Mg.molarMassG));
  set('NO3', fromMg(recipe.nitrateMgPerL ?? 0, TYPED_MOLAR_MASS_G.nitrate));
  set('PO4', fromMg(recipe.phosphateMgPerL ?? 0, TYPED_MOLAR_MASS_G.phosphate));
  set('TAN', fromMg(recipe.ammoniaMgPerL ?? 0, TYPED_MOLAR_MASS_G.ammonia));
  set('SO4', totalSulfateMolPerKg(salinityPractical) * kg);
  set('B', totalBorateMolPerKg(salinityPractical) * kg);
  const alkalinity = umolPerKgFromDkh(recipe.alkalinityDkh, tempC, salinityPractical) * 1e-6;
  set('O2', oxygenSaturationUmolPerKg(tempC, salinityPractical) * 1e-6 * kg);
  set('DIC', dicMolPerKg(block, kg, recipe, alkalinity) * kg);
  set('untrackedCharge', alkalinity * kg - alkalinityEq(block));
  const wantedSaltKg = (salinityPractical * SALT_G_PER_KG_PER_PSU * kg) / 1000;
  set('untrackedSalt', (wantedSaltKg - saltKg(block)) / saltKgPerMol('untrackedSalt'));
  block[WATER] = kg - wantedSaltKg;
  return block;
}

/** Pure water from a purifier: no ions, no carbon; it has met the air. */
export function pureWater(volumeL: number, tempC: number): Block {
  const block = emptyBlock();
  const kg = (volumeL * densityKgPerM3(tempC, 0)) / 1000;
  block[WATER] = kg;
  block[indexOf.O2] = oxygenSaturationUmolPerKg(tempC, 0) * 1e-6 * kg;
  return block;
}
