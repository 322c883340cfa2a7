import type { Turned, TurnTold } from '../../ask/outcome';
import { recipeOf, type Recipe } from '../plan/recipe';

/** What is mixed and dosed once a turn holds. */
export const turnRecipe = (
  { held, toppedOffLPerDay }: Turned,
  { question }: Pick<TurnTold, 'question'>,
): Recipe => recipeOf(held, toppedOffLPerDay, question.kit);
