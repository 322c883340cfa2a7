import { threeFigures } from './threeFigures';
import type { Scenario } from '../scenario/schema';
import { additives, type AdditiveId } from '../species/additives';

type Doser = Scenario['dosers'][number];

const schedule: Doser['schedule'] = {
  ...{ way: 'spread', fromHour: 0, hours: 24, doses: 4, everyMinutes: 60, pumpMlPerMin: 20 },
  weekdays: [],
};

/** Carbonates in a stock of this strength keep clear at room temperature: common practice. */
export const STOCK_G_PER_L = { sodiumCarbonate: 100, sodiumBicarbonate: 60 } as const;
export type Carbonate = keyof typeof STOCK_G_PER_L;

/** Moles of calcium that go with one mole of the carbonate: two equivalents take one calcium. */
const CALCIUM_PER_MOL: Readonly<Record<Carbonate, number>> = {
  sodiumCarbonate: 1,
  sodiumBicarbonate: 0.5,
};

const molPerL = (additive: AdditiveId, gramsPerL: number) =>
  gramsPerL / additives[additive].molarMassG;

/** What the two pumps are called. */
export interface PairNames {
  readonly carbonate: string;
  readonly calcium: string;
}

/** By what they bring, until somebody calls them otherwise. */
const plainNames: PairNames = { carbonate: 'carbonate', calcium: 'calcium' };

/**
 * Two stocks dosed millilitre for millilitre: a carbonate, and the calcium and magnesium that
 * skeletons lay down with it.
 */
export function twoPart(
  carbonate: Carbonate,
  mlPerDay: number,
  scenario: Scenario,
  names: PairNames = plainNames,
): Doser[] {
  const gramsPerL = STOCK_G_PER_L[carbonate];
  const calcium = molPerL(carbonate, gramsPerL) * CALCIUM_PER_MOL[carbonate];
  const magnesium = (calcium * scenario.corals.skeletonMgPerCa) / 1000;
  const gramsOf = (additive: AdditiveId, mol: number) =>
    threeFigures(mol * additives[additive].molarMassG);
  const stock = (name: string, recipe: Doser['recipe']): Doser => ({
    ...{ name, recipe, mlPerDay, schedule },
    stockL: Math.max(2, Math.ceil((mlPerDay * 30) / 1000)),
  });
  const minerals: Doser['recipe'] = [
    {
      additive: 'calciumChlorideDihydrate',
      gramsPerL: gramsOf('calciumChlorideDihydrate', calcium),
    },
    {
      additive: 'magnesiumChlorideHexahydrate',
      gramsPerL: gramsOf('magnesiumChlorideHexahydrate', magnesium),
    },
  ];
  return [
    stock(names.carbonate, [{ additive: carbonate, gramsPerL }]),
    stock(
      names.calcium,
      minerals.filter((one) => one.gramsPerL > 0),
    ),
  ];
}
