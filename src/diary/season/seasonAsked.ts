import type { Scenario } from '../../../shared/scenario/schema';
import {
  usualMostPerDay,
  usualTargets,
  type MostPerDay,
  type SeasonTargets,
} from '../../../shared/recipe/seasonTargets';

/** As far back as anybody looks: two years. */
export const MOST_BACK_DAYS = 731;
/** Spring to autumn. */
const USUAL_BACK_DAYS = 240;

/** What is asked of a season beside the log. */
interface SeasonWants {
  readonly backDays: number;
  readonly targets: SeasonTargets;
  readonly mostPerDay: MostPerDay;
}

export const usualWants = (plan: Scenario): SeasonWants => ({
  ...{ backDays: USUAL_BACK_DAYS, mostPerDay: usualMostPerDay, targets: usualTargets(plan) },
});
