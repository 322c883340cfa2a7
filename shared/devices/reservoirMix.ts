import type { Scenario } from '../scenario/schema';
import { limewaterSaturationGPerL } from '../seawater/limewater';
import { densityKgPerM3 } from '../seawater/density';
import { additives, dissolve } from '../species/additives';
import { addScaled, indexOf, WATER, type Block } from '../species/block';
import { pureWater } from '../water/mixWater';
import type { Plant } from './device';

const LIME = additives.calciumHydroxide.molarMassG;

export function saturationGPerL({ topOff, tank }: Scenario): number {
  return (limewaterSaturationGPerL(tank.tempC) * topOff.saturationPercent) / 100;
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
  plant.addLime(grams / LIME);
  const water = plant.contents('reservoir');
  const roomMol =
    (saturationGPerL(scenario) * (water[WATER]! / kgPerL)) / LIME - water[indexOf.Ca]!;
  plant.dissolveLime('reservoir', Math.max(0, Math.min(roomMol, plant.limeMol())));
}
