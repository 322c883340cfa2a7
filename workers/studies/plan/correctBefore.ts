import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { correct, type Correction } from './correct';
import type { PlanQuestion } from './threePlans';

/**
 * How the water gets to the target first, with the dosing of the plan that is to hold it there: from
 * the water as the tank's own plan has left it.
 */
export function correctBefore(
  { now, targetDkh, giveOrTakeDkhPerDay }: Omit<PlanQuestion, 'kit'>,
  plan: Scenario,
  additive: Carbonate = 'sodiumBicarbonate',
  options: SimulationOptions = usualOptions,
): Correction {
  const upkeep = { ...plan, tank: { ...plan.tank, alkalinityDkh: now.tank.alkalinityDkh } };
  return correct({ upkeep, targetDkh, giveOrTakeDkhPerDay, additive }, options, now);
}
