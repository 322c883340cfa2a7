import {
  gramsForDkh,
  gramsForMgPerL,
  mgPerGram,
  drySaltGrams,
} from '../../../shared/recipe/gramsFor';
import type { Check } from '../check';
import { readTable } from '../table';
import { additiveOf } from './additiveOf';

/** Half of the last digit printed, and the part in 100 000 that tables of atomic weights differ by. */
const within = (half: number, expected: number) => half + expected * 1e-5;

/** The grams that recipes and corrections weigh in, held against the table of additives. */
export function recipeChecks(): Check[] {
  const rows = readTable('additives.csv').flatMap((row): Check[] => {
    const additive = additiveOf[row.text('substance')];
    if (!additive) return [];
    const metal = additive.startsWith('magnesium') ? 'Mg' : 'Ca';
    const columns: [column: string, got: () => number, half: number, unit: string][] = [
      ['g_to_raise_100L_by_1dKH', () => gramsForDkh(additive, 1, 100), 5e-4, 'g'],
      ['Ca_or_Mg_mg_per_g', () => mgPerGram(additive, metal), 5e-3, 'mg/g'],
      [
        'g_to_raise_100L_Ca_or_Mg_by_10ppm',
        () => gramsForMgPerL(additive, metal, 10, 100),
        5e-4,
        'g',
      ],
    ];
    return columns
      .filter(([column]) => row.has(column))
      .map(([quantity, got, half, unit]) => ({
        ...{ id: `recipe/${additive}`, quantity, unit, expected: row.number(quantity) },
        source: 'atomic weights (additives.csv)',
        howVerified: 'computed',
        got: got(),
        tolerance: within(half, row.number(quantity)),
      }));
  });
  const salt: Check = {
    id: 'recipe/salt',
    quantity: 'dry salt in 100 L at S 35, 25 °C',
    source: '1.02334 kg/L × 35.16504 g/kg × 100 L (Millero et al. 2008), worked by hand',
    howVerified: 'computed',
    expected: 3598.6,
    got: drySaltGrams(100, 35, 25),
    tolerance: 0.1,
    unit: 'g',
  };
  return [...rows, salt];
}
