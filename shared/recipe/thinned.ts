import { threeFigures } from './threeFigures';
import type { Scenario } from '../scenario/schema';

type Dosers = Scenario['dosers'];

/** Portions of a pump are uncertain below this: common practice. */
const LEAST_ML_PER_DAY = 5;
const TIMES = 10;

/** Stocks of so small a dose that no pump brings it: a tenth as strong, and ten times as much. */
export function thinned(dosers: Dosers): Dosers {
  if (dosers.every(({ mlPerDay }) => mlPerDay >= LEAST_ML_PER_DAY)) return dosers;
  return dosers.map((doser) => ({
    ...doser,
    mlPerDay: threeFigures(doser.mlPerDay * TIMES),
    recipe: doser.recipe.map((part) => ({
      ...part,
      gramsPerL: threeFigures(part.gramsPerL / TIMES),
    })),
  }));
}
