import type { Scenario } from '../scenario/schema';
import { oxidisedMeqPerG } from '../species/additives';

type Doser = Scenario['dosers'][number];

/** Alkalinity in a litre of a stock once all of it has been oxidised, meq/L. */
export const stockMeqPerL = ({ recipe }: Doser): number =>
  recipe.reduce((sum, { additive, gramsPerL }) => sum + gramsPerL * oxidisedMeqPerG(additive), 0);

/** What is the other part of a pair: it gives something, and no alkalinity. */
export const otherParts = ({ dosers }: Pick<Scenario, 'dosers'>): Doser[] =>
  dosers.filter((doser) => stockMeqPerL(doser) === 0 && doser.mlPerDay > 0);

/** Whether something that brings alkalinity runs beside something that brings none. */
export const runsPair = (plan: Pick<Scenario, 'dosers'>): boolean =>
  otherParts(plan).length > 0 &&
  plan.dosers.some((doser) => stockMeqPerL(doser) > 0 && doser.mlPerDay > 0);
