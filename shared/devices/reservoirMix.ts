import type { Scenario } from '../scenario/schema';
import { limewaterSaturationGPerL } from '../seawater/limewater';
import { densityKgPerM3 } from '../seawater/density';
import { additives, dissolve } from '../species/additives';
import { addScaled, emptyBlock, indexOf, WATER, type Block } from '../species/block';
import { pureWater } from '../water/mixWater';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { Reaction } from '../species/reaction';
import type { Plant, Vessel } from './device';

const LIME = additives.calciumHydroxide.molarMassG;
/** Ca(OH)2 dissolves as CaO and water (see the note in species.ts). */
const BOUND_WATER_KG_PER_MOL = molarMassGPerMol({ H: 2, O: 1 }) / 1000;
const settling = new Reaction({ Ca: -1, reservoirLime: 1 });
const dissolving = new Reaction({ reservoirLime: -1, Ca: 1 });

export function saturationGPerL({ topOff, tank }: Scenario): number {
  return (limewaterSaturationGPerL(tank.tempC) * topOff.saturationPercent) / 100;
}

/** The vessel that the top-off draws from. */
export function reservoir(scenario: Scenario): Vessel {
  const { topOff, tank } = scenario;
  const { contents, solidLimeMol } = firstFill(scenario);
  const { additive, gramsPerL } = topOff;
  return {
    ...{ id: 'reservoir', role: 'reservoir', contents },
    undissolved: { pool: 'reservoirLime', species: 'Ca', mol: solidLimeMol },
    holdsKg: (topOff.reservoirL * densityKgPerM3(tank.tempC, 0)) / 1000,
    isMixedAs: ({ topOff: before }) =>
      additive === before.additive && (additive === 'none' || gramsPerL === before.gramsPerL),
  };
}

export const limeMol = (plant: Plant): number => plant.inPool('reservoirLime');

/** Lime from the floor of the reservoir goes into its water. */
export function dissolveLime(plant: Plant, mol: number): void {
  const water = emptyBlock();
  water[WATER] = mol * BOUND_WATER_KG_PER_MOL;
  plant.react('reservoir', dissolving, mol);
  plant.transfer('refill', 'outside', 'reservoir', water);
}

/** The reservoir as it is first filled: clear solution, with what is too much lying below it. */
export function firstFill(scenario: Scenario): { contents: Block; solidLimeMol: number } {
  const { topOff, tank } = scenario;
  const contents = pureWater(topOff.reservoirL, tank.tempC);
  if (topOff.additive === 'none') return { contents, solidLimeMol: 0 };
  if (topOff.additive !== 'calciumHydroxide') {
    addScaled(contents, dissolve(topOff.additive, topOff.gramsPerL * topOff.reservoirL), 1);
    return { contents, solidLimeMol: 0 };
  }
  const powderG = topOff.gramsPerL * topOff.reservoirL + topOff.settledG;
  const dissolvedG = Math.min(powderG, saturationGPerL(scenario) * topOff.reservoirL);
  addScaled(contents, dissolve('calciumHydroxide', dissolvedG), 1);
  return { contents, solidLimeMol: (powderG - dissolvedG) / LIME };
}

/** Fills up with fresh water and the weighed additive; lime dissolves until saturated or gone. */
export function refill(scenario: Scenario, plant: Plant): void {
  const { topOff, tank } = scenario;
  const kgPerL = densityKgPerM3(tank.tempC, 0) / 1000;
  const litres = topOff.reservoirL - plant.waterKg('reservoir') / kgPerL;
  if (litres <= 0) return;
  plant.transfer('topOffRefill', 'outside', 'reservoir', pureWater(litres, tank.tempC));
  if (topOff.additive === 'none') return;
  const grams = topOff.gramsPerL * litres;
  if (topOff.additive !== 'calciumHydroxide') {
    plant.transfer('topOffRefill', 'outside', 'reservoir', dissolve(topOff.additive, grams));
    return;
  }
  plant.react('outside', settling, grams / LIME);
  const water = plant.contents('reservoir');
  const roomMol =
    (saturationGPerL(scenario) * (water[WATER]! / kgPerL)) / LIME - water[indexOf.Ca]!;
  dissolveLime(plant, Math.max(0, Math.min(roomMol, limeMol(plant))));
}
