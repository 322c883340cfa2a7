import { say } from '../../shared/words/settings';
import type { Scenario } from '../../shared/scenario/schema';

type Doser = Scenario['dosers'][number];

const schedule: Doser['schedule'] = {
  way: 'spread',
  fromHour: 0,
  hours: 24,
  doses: 4,
  everyMinutes: 60,
  pumpMlPerMin: 20,
  weekdays: [],
};

const doser = (name: string, recipe: Doser['recipe']): Doser => ({
  name,
  recipe,
  mlPerDay: 0,
  schedule,
  stockL: 2,
});

const carbonate = doser(say.carbonate, [{ additive: 'sodiumCarbonate', gramsPerL: 100 }]);
/** As much calcium as the carbonate takes along: mole for mole. */
const calcium = doser(say.calcium, [{ additive: 'calciumChlorideDihydrate', gramsPerL: 139 }]);
const bicarbonate = doser(say.bicarbonate, [{ additive: 'sodiumBicarbonate', gramsPerL: 80 }]);

/** Pumps that a keeper may add to a plan, at a dose of nothing yet. */
export const newDosers: readonly { readonly label: string; readonly make: readonly Doser[] }[] = [
  { label: say.addTwoPart, make: [carbonate, calcium] },
  { label: say.addBicarbonate, make: [bicarbonate] },
];
