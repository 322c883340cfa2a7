import { refilled } from '../../../shared/recipe/refilled';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Turned, TurnTold } from '../../ask/outcome';
import { recipeOf, type Recipe } from '../plan/recipe';

/** What holds, in the higher of the waters that it meets, today's and the target: so much may stand in a bottle. */
export const heldHighest = ({ held, targetDkh }: Turned): Scenario => ({
  ...held,
  tank: { ...held.tank, alkalinityDkh: Math.max(held.tank.alkalinityDkh, targetDkh) },
});

/** With no more in the reservoir than may run in at once, and filled as often as that asks for. */
function filledSafely(scenario: Scenario, { fullestL, toppedOffLPerDay }: Turned): Scenario {
  const { topOff } = scenario;
  if (fullestL === undefined || fullestL >= topOff.reservoirL) return scenario;
  return refilled({ ...scenario, topOff: { ...topOff, reservoirL: fullestL } }, toppedOffLPerDay);
}

/** What is mixed and dosed once a turn holds. */
export const turnRecipe = (turned: Turned, { question }: Pick<TurnTold, 'question'>): Recipe =>
  recipeOf(filledSafely(heldHighest(turned), turned), turned.toppedOffLPerDay, question.kit);
