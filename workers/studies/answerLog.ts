import { USUAL_ACCURACY_DKH, type Reading } from '../../shared/log/reading';
import { limitBands } from '../../shared/scenario/limitBands';
import type { Scenario } from '../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../engine/simulation';
import { asItHappened } from './fit/asItHappened';
import { notesOf } from './fit/cannotTell';
import { fitHappened, tooLittle, type Fit } from './fit/fit';
import { parametersOf } from './fit/parameters';
import { fanOf, type Fan } from './forecast/fan';
import { leavingOf, type Leaving } from './forecast/leaving';
import { nextTest, useNow, type NextTest, type UseNow } from './forecast/nextTest';

/** All that a log says: consumption, what comes, when to test again, and what it cannot say. */
export interface LogAnswer {
  readonly fit: Fit;
  readonly useNow: UseNow;
  readonly fan: Fan;
  readonly leaving: Leaving | undefined;
  readonly nextTest: NextTest;
  readonly notes: readonly string[];
}

/** How far ahead the forecast looks. */
export const FORECAST_DAYS = 28;

/** The answer, or the sentence that says why there is none yet. */
export function answerLog(
  plan: Scenario,
  log: readonly Reading[],
  withinDkhPerDay: number,
  options: SimulationOptions = usualOptions,
): LogAnswer | string {
  const reason = tooLittle(log);
  if (reason !== undefined) return reason;
  const happened = asItHappened(plan, log);
  const parameters = parametersOf(happened);
  const fit = fitHappened(happened, options);
  const fan = fanOf(happened, parameters, fit, FORECAST_DAYS, options);
  const sigma = happened.observations.findLast(({ kind }) => kind === 'alkalinity')?.sigma;
  return {
    fit,
    fan,
    useNow: useNow(fit),
    leaving: leavingOf(fan, fit.covariance, fit.endH, limitBands(plan.limits)[0]!),
    nextTest: nextTest(fit, fan, parameters, sigma ?? USUAL_ACCURACY_DKH, withinDkhPerDay),
    notes: notesOf(fit, plan),
  };
}
