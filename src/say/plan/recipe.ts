import { bottleDumps } from '../../../shared/recipe/bottleDump';
import type { Kit } from '../../../shared/recipe/kit';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { wordFor } from '../../../shared/scenario/words';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import { saltName } from './saltName';
import { baggedSaltGrams } from '../../../shared/recipe/gramsFor';

/** The mixing and the dosing of a plan, each a line of text. */
export interface Recipe {
  readonly mix: readonly string[];
  readonly dose: readonly string[];
  /** "calcium hydroxide 180 g", for thirty days. */
  readonly monthly: readonly string[];
}

const DAYS_A_MONTH = 30;

const { recipe: told } = say;

const text = (grams: number): string =>
  grams >= 1000 ? `${figure(grams / 1000, 2)} kg` : `${figure(threeFigures(grams))} g`;

const scoops = (grams: number, { scoopG }: Kit): string =>
  scoopG > 0 ? told.scoops(figure(grams / scoopG, 1), figure(scoopG)) : '';

/** "180 g calcium hydroxide (30.0 level scoops of 6 g)". */
const powder = (grams: number, additive: string, kit: Kit): string =>
  `${told.powder(text(grams), wordFor(additive))}${scoops(grams, kit)}`;

/** Grams of every powder, and of salt, that thirty days use up. */
function monthly(scenario: Scenario, litresOfTopOff: number): string[] {
  const grams = new Map<string, number>();
  const add = (name: string, more: number) => grams.set(name, (grams.get(name) ?? 0) + more);
  const { topOff, dosers, waterChanges: change, tank } = scenario;
  if (topOff.additive !== 'none') {
    add(wordFor(topOff.additive), litresOfTopOff * topOff.gramsPerL * DAYS_A_MONTH);
  }
  for (const { recipe, mlPerDay } of dosers) {
    for (const { additive, gramsPerL } of recipe) {
      add(wordFor(additive), (mlPerDay / 1000) * gramsPerL * DAYS_A_MONTH);
    }
  }
  if (change.percent > 0) {
    const litres = ((change.percent / 100) * tank.volumeL * DAYS_A_MONTH) / change.everyDays;
    add(told.seaSalt, baggedSaltGrams(litres, change.salinityPractical, change.newWaterTempC));
  }
  return [...grams].filter(([, g]) => g > 0).map(([name, g]) => told.used(name, text(g)));
}

/** How to mix and dose a plan; `litresOfTopOff` is what evaporates in a day. */
export function recipeOf(scenario: Scenario, litresOfTopOff: number, kit: Kit): Recipe {
  const { topOff, dosers, waterChanges: change, tank } = scenario;
  const mix: string[] = [];
  const dose: string[] = [];
  if (topOff.additive !== 'none' && topOff.gramsPerL > 0) {
    const grams = topOff.reservoirL * topOff.gramsPerL;
    const litres = figure(topOff.reservoirL);
    mix.push(told.mixTopOff(powder(grams, topOff.additive, kit), litres, figure(topOff.gramsPerL)));
    dose.push(told.doseTopOff(figure(litresOfTopOff, 1), topOff.refillEveryDays));
  }
  const dumps = bottleDumps(scenario);
  for (const [pump, { name, recipe, mlPerDay, stockL }] of dosers.entries()) {
    const dump = dumps.find((one) => one.pump === pump);
    const apart = dump ? ` ${told.keepApart(figure(Math.floor(dump.fillL * 1000)))}` : '';
    const powders = recipe.map(({ additive, gramsPerL }) =>
      powder(gramsPerL * stockL, additive, kit),
    );
    mix.push(told.mixStock(name, powders.join(told.and), figure(stockL)) + apart);
    const [perDay, perHour] = [figure(mlPerDay), figure(mlPerDay / 24, 1)];
    dose.push(
      kit.pumpMlPerMin > 0
        ? told.doseStockByPump(name, perDay, perHour, figure(mlPerDay / kit.pumpMlPerMin, 1))
        : told.doseStock(name, perDay, perHour),
    );
  }
  if (change.percent > 0) {
    const litres = (change.percent / 100) * tank.volumeL;
    const grams = baggedSaltGrams(litres, change.salinityPractical, change.newWaterTempC);
    dose.push(
      told.change(
        figure(litres, 1),
        figure(change.percent),
        change.everyDays,
        figure(change.salinityPractical),
        saltName(change.salt.name),
        text(grams),
      ),
    );
  }
  return { mix, dose, monthly: monthly(scenario, litresOfTopOff) };
}
