import type { Scenario } from '../../../shared/scenario/schema';
import type { LogAnswer } from '../../client/outcome';

/** The tank as it stands: the plan with what the log has told, and its water when the log ends. */
export function tankNow(plan: Scenario, answer: LogAnswer | undefined): Scenario {
  if (!answer) return plan;
  const { fit, fan, useNow } = answer;
  const end = fan.timesH.findIndex((timeH) => timeH >= fit.endH);
  return {
    ...fit.scenario,
    days: plan.days,
    limits: plan.limits,
    tank: { ...fit.scenario.tank, alkalinityDkh: Number(fan.dkh[end]!.toFixed(2)) },
    corals: { ...fit.scenario.corals, useDkhPerDay: Number(useNow.dkhPerDay.toFixed(3)) },
  };
}
