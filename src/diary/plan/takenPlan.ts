import { LONGEST_NOTE } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { say } from '../../../shared/words/plans';
import type { ToldOffer } from '../../say/plan/offer';

/** The keeper's plan with what one of the three doses and changes; its water and its use stay the keeper's. */
export function takenPlan(plan: Scenario, { scenario }: ToldOffer): Scenario {
  const { dosers, topOff, calciumReactor, waterChanges } = scenario;
  return { ...plan, dosers, topOff, calciumReactor, waterChanges };
}

/** What is written into the log when it is taken: what to mix, and how the water gets there first. */
export const takenNote = ({ scenario, recipe }: ToldOffer, first: string): string =>
  [say.offer.taken(scenario.title), ...recipe.mix, first]
    .filter((text) => text !== '')
    .join(' · ')
    .slice(0, LONGEST_NOTE);
