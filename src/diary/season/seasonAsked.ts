import type { TankLog } from '../../../shared/log/tankLog';
import { type MostPerDay } from '../../../shared/recipe/mostPerDay';
import { targetsWithin, type SeasonTargets } from '../../../shared/recipe/seasonTargets';
import type { Scenario } from '../../../shared/scenario/schema';

/** As far back as anybody looks: two years. */
export const MOST_BACK_DAYS = 731;
/** Spring to autumn. */
export const USUAL_BACK_DAYS = 240;

/** Where calcium and magnesium are to stand, and how fast they may be moved. */
interface MetalWants {
  readonly targets: SeasonTargets;
  readonly mostPerDay: MostPerDay;
}

/** What the tank's log keeps of that: a season and a turn ask for the same. */
export const metalWants = (plan: Scenario, log: TankLog): MetalWants => ({
  targets: targetsWithin(plan, {
    ...{ calcium: log.calciumTargetMgPerL, magnesium: log.magnesiumTargetMgPerL },
  }),
  mostPerDay: {
    ...{ calcium: log.mostCalciumMgPerLPerDay, magnesium: log.mostMagnesiumMgPerLPerDay },
    salinity: log.mostSalinityPerDay,
  },
});

/** What is asked of a season beside the log. */
export const seasonWants = (plan: Scenario, log: TankLog, backDays = USUAL_BACK_DAYS) => ({
  ...{ backDays, ...metalWants(plan, log) },
});
