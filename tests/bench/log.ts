import { localTimeOf } from '../../shared/log/localTime';
import type { Scenario } from '../../shared/scenario/schema';
import { answerLog } from '../../workers/studies/answerLog';
import { fitLog } from '../../workers/studies/fit/fit';
import { threePlans } from '../../workers/studies/plan/threePlans';
import { medianMs, type Print } from './engine';
import { START_H, sixtyReadings } from './sixtyReadings';

/** What a keeper waits for after a reading: sixty of them, a day apart. */
export function benchLog(print: Print, plan: Scenario): void {
  const log = sixtyReadings;
  print(
    'fit_60_readings',
    medianMs(() => fitLog(plan, log), 2, 7),
    'ms',
  );
  print(
    'fit_and_forecast_60_readings',
    medianMs(() => answerLog(plan, log, 0.1), 1, 5),
    'ms',
  );
  const gPerL = plan.topOff.gramsPerL;
  const ran = [0.6, 0.8, 1.1].map((share, i) => ({
    until: localTimeOf(START_H + 15 * (i + 1) * 24),
    plan: { ...plan, topOff: { ...plan.topOff, gramsPerL: share * gPerL } },
  }));
  print(
    'fit_60_readings_three_plan_changes',
    medianMs(() => fitLog(plan, log, undefined, ran), 2, 7),
    'ms',
  );
  const kit = { scoopG: 0, pumpMlPerMin: 0 };
  const question = { now: plan, targetDkh: 8.5, giveOrTakeDkhPerDay: 0.08, kit };
  print(
    'three_plans',
    medianMs(() => threePlans(question), 1, 5),
    'ms',
  );
}
