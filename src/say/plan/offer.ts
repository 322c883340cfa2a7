import type { Kit } from '../../../shared/recipe/kit';
import type { Scenario } from '../../../shared/scenario/schema';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import type { Offer } from '../../ask/outcome';
import { toldVerdict, type ToldVerdict } from '../verdict/verdict';
import { recipeOf, type Recipe } from './recipe';
import { wayTitle } from './ways';

/** A plan that holds the target, in the reader's words: its name, its recipe, and what the trial says. */
export interface ToldOffer extends Offer {
  readonly title: string;
  readonly verdict: ToldVerdict;
  readonly recipe: Recipe;
}

/** "Limewater first, 8.5 dKH". */
const aiming = (title: string, { tank }: Scenario): string =>
  say.ways.aiming(title, figure(tank.alkalinityDkh));

/** A plan as the keeper reads and keeps it: it carries its own name. */
export function toldOffer(offer: Offer, kit: Kit): ToldOffer {
  const title = wayTitle(offer);
  const scenario = { ...offer.scenario, title: aiming(title, offer.scenario) };
  return {
    ...{ ...offer, title, scenario },
    verdict: toldVerdict(offer.verdict, scenario),
    recipe: recipeOf(scenario, offer.toppedOffLPerDay, kit),
  };
}
