import type { Scenario } from '../../../shared/scenario/schema';
import type { Turned, TurnTold } from '../../ask/outcome';
import { recipeOf, type Recipe } from '../plan/recipe';

/** What holds, in the higher of the waters that it meets, today's and the target: so much may stand in a bottle. */
export const heldHighest = ({ held, targetDkh }: Turned): Scenario => ({
  ...held,
  tank: { ...held.tank, alkalinityDkh: Math.max(held.tank.alkalinityDkh, targetDkh) },
});

/** A reservoir is emptied by four fifths, then filled. */
const USED_SHARE = 0.8;

/** With no more in the reservoir than may run in at once, and filled as often as that asks for. */
function filledSafely(scenario: Scenario, { fullestL, toppedOffLPerDay }: Turned): Scenario {
  const { topOff } = scenario;
  if (fullestL === undefined || fullestL >= topOff.reservoirL) return scenario;
  const lastsDays = Math.max(1, Math.floor((USED_SHARE * fullestL) / toppedOffLPerDay));
  const refillEveryDays = Math.min(topOff.refillEveryDays || lastsDays, lastsDays);
  return { ...scenario, topOff: { ...topOff, reservoirL: fullestL, refillEveryDays } };
}

/** What is mixed and dosed once a turn holds. */
export const turnRecipe = (turned: Turned, { question }: Pick<TurnTold, 'question'>): Recipe =>
  recipeOf(filledSafely(heldHighest(turned), turned), turned.toppedOffLPerDay, question.kit);
