import type { Scenario } from '../../../shared/scenario/schema';
import type { Turned, TurnTold } from '../../ask/outcome';
import { recipeOf, type Recipe } from '../plan/recipe';

/** What holds, in the higher of the waters that it meets, today's and the target: so much may stand in a bottle. */
export const heldHighest = ({ held, targetDkh }: Turned): Scenario => ({
  ...held,
  tank: { ...held.tank, alkalinityDkh: Math.max(held.tank.alkalinityDkh, targetDkh) },
});

/** What is mixed and dosed once a turn holds. */
export const turnRecipe = (turned: Turned, { question }: Pick<TurnTold, 'question'>): Recipe =>
  recipeOf(heldHighest(turned), turned.toppedOffLPerDay, question.kit);
