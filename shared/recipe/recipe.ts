import type { Scenario } from '../scenario/schema';
import { additives, type AdditiveId } from '../species/additives';
import { saltGrams } from './gramsFor';

/** What the keeper measures with; 0 where they have none. */
export interface Kit {
  /** What a level scoop of the powder weighs, g. */
  readonly scoopG: number;
  readonly pumpMlPerMin: number;
}

/** The mixing and the dosing of a plan, each a line of text. */
export interface Recipe {
  readonly mix: readonly string[];
  readonly dose: readonly string[];
  /** "calcium hydroxide 180 g", for thirty days. */
  readonly monthly: readonly string[];
}

const DAYS_A_MONTH = 30;

const text = (grams: number): string =>
  grams >= 1000 ? `${(grams / 1000).toFixed(2)} kg` : `${Number(grams.toPrecision(3))} g`;

const scoops = (grams: number, { scoopG }: Kit): string =>
  scoopG > 0 ? ` (${(grams / scoopG).toFixed(1)} level scoops of ${scoopG} g)` : '';

const label = (additive: AdditiveId) => additives[additive].label;

/** Grams of every powder, and of salt, that thirty days use up. */
function monthly(scenario: Scenario, litresOfTopOff: number): string[] {
  const grams = new Map<string, number>();
  const add = (name: string, more: number) => grams.set(name, (grams.get(name) ?? 0) + more);
  const { topOff, dosers, waterChanges: change, tank } = scenario;
  if (topOff.additive !== 'none') {
    add(label(topOff.additive), litresOfTopOff * topOff.gramsPerL * DAYS_A_MONTH);
  }
  for (const { recipe, mlPerDay } of dosers) {
    for (const { additive, gramsPerL } of recipe) {
      add(label(additive), (mlPerDay / 1000) * gramsPerL * DAYS_A_MONTH);
    }
  }
  if (change.percent > 0) {
    const litres = ((change.percent / 100) * tank.volumeL * DAYS_A_MONTH) / change.everyDays;
    add('dry sea salt', saltGrams(litres, change.salinityPractical, change.newWaterTempC));
  }
  return [...grams].filter(([, g]) => g > 0).map(([name, g]) => `${name} ${text(g)}`);
}

/** How to mix and dose a plan; `litresOfTopOff` is what evaporates in a day. */
export function recipeOf(scenario: Scenario, litresOfTopOff: number, kit: Kit): Recipe {
  const { topOff, dosers, waterChanges: change, tank } = scenario;
  const mix: string[] = [];
  const dose: string[] = [];
  if (topOff.additive !== 'none' && topOff.gramsPerL > 0) {
    const grams = topOff.reservoirL * topOff.gramsPerL;
    mix.push(
      `Top-off: ${text(grams)} ${label(topOff.additive)}${scoops(grams, kit)} in ${topOff.reservoirL} L of pure water; afterwards ${topOff.gramsPerL} g for each litre that you fill up, no more. Let it settle, take the clear liquid, keep a lid on it.`,
    );
    dose.push(
      `Top-off replaces what evaporates, about ${litresOfTopOff.toFixed(1)} L a day; refill every ${topOff.refillEveryDays} days.`,
    );
  }
  for (const { name, recipe, mlPerDay, stockL } of dosers) {
    const powders = recipe.map(({ additive, gramsPerL }) => {
      const grams = gramsPerL * stockL;
      return `${text(grams)} ${label(additive)}${scoops(grams, kit)}`;
    });
    mix.push(`Stock “${name}”: ${powders.join(' and ')}, made up to ${stockL} L with pure water.`);
    const minutes =
      kit.pumpMlPerMin > 0
        ? `, ${(mlPerDay / kit.pumpMlPerMin).toFixed(1)} minutes of your pump`
        : '';
    dose.push(
      `${name}: ${mlPerDay} mL a day (${(mlPerDay / 24).toFixed(1)} mL an hour)${minutes}.`,
    );
  }
  if (change.percent > 0) {
    const litres = (change.percent / 100) * tank.volumeL;
    const grams = saltGrams(litres, change.salinityPractical, change.newWaterTempC);
    dose.push(
      `Water change: ${litres.toFixed(1)} L (${change.percent} %) every ${change.everyDays} days, mixed to ${change.salinityPractical} ppt with ${change.salt.name} (about ${text(grams)} of dry salt; weigh, then measure).`,
    );
  }
  return { mix, dose, monthly: monthly(scenario, litresOfTopOff) };
}
