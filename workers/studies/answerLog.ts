import { hoursOf } from '../../shared/log/localTime';
import { USUAL_ACCURACY_DKH, type Reading } from '../../shared/log/reading';
import { limitBands } from '../../shared/scenario/limitBands';
import type { Scenario } from '../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../engine/simulation';
import { fitLog, type Fit } from './fit/fit';
import { tooLittle, type TooLittle } from './fit/tooLittle';
import { turnsSince, type RanUntil } from './fit/turnedAt';
import { aheadOf, fanOf, type Fan } from './forecast/fan';
import { habitsOf, type Habits } from './forecast/habit';
import { goingOn } from './forecast/goingOn';
import { leavingOf, type Leaving } from './forecast/leaving';
import { nextTest, type NextTest } from './forecast/nextTest';
import { replacedAt } from './forecast/replacedAt';
import { tankNow } from './forecast/tankNow';

/** Today's consumption. */
export interface UseNow {
  readonly dkhPerDay: number;
  /** By the readings alone, all that was typed taken as it is. */
  readonly standardErrorDkhPerDay: number;
  /** And where volume, evaporation, strength and pumps are off as they commonly are. */
  readonly withDoubtsDkhPerDay: number;
}

/** All that a log says: consumption, what comes, and when to test again. */
export interface LogAnswer {
  readonly fit: Fit;
  readonly useNow: UseNow;
  /** The tank as it stands: where plans and corrections begin. */
  readonly now: Scenario;
  /** What the forecast takes to go on being poured in. */
  readonly habits: Habits;
  readonly fan: Fan;
  readonly leaving: Leaving | undefined;
  readonly nextTest: NextTest;
}

/** Why a log says nothing yet: too little to tell, or a fit that found no rest. */
export type Unanswered = TooLittle | { readonly why: 'notConverged' };

/** How far ahead the forecast looks. */
export const FORECAST_DAYS = 28;

export function useNowOf({ now }: Fit): UseNow {
  const standardErrorDkhPerDay = Math.sqrt(now.covariance[1]![1]!);
  return {
    dkhPerDay: now.useDkhPerDay,
    standardErrorDkhPerDay,
    withDoubtsDkhPerDay: Math.hypot(
      standardErrorDkhPerDay,
      ...now.doubts.map(({ useDkhPerDay }) => useDkhPerDay),
    ),
  };
}

/** The answer, or why there is none yet; `ran` is what was dosed before each turn. */
export function answerLog(
  plan: Scenario,
  log: readonly Reading[],
  withinDkhPerDay: number,
  options: SimulationOptions = usualOptions,
  ran: readonly RanUntil[] = [],
): LogAnswer | Unanswered {
  const reason = tooLittle(log);
  if (reason !== undefined) return reason;
  const fit = fitLog(plan, log, options, ran);
  if (!fit.converged) return { why: 'notConverged' };
  const habits = habitsOf(log, fit.startAt, fit.endH, replacedAt(ran, plan));
  const now = tankNow(plan, log, fit, habits);
  const goes = goingOn({ ...now, days: FORECAST_DAYS }, habits, Math.floor(fit.endH));
  const still = turnsSince(ran, hoursOf(fit.startAt) + Math.floor(fit.endH));
  const ahead = aheadOf(goes, fit, options, still);
  const sigma = fit.points.findLast(({ kind }) => kind === 'alkalinity')?.sigma;
  const scatter = (sigma ?? USUAL_ACCURACY_DKH) * fit.spread;
  const leaving = leavingOf(ahead, fit.now.covariance, limitBands(plan.limits)[0]!);
  return {
    ...{ fit, now, habits, leaving },
    useNow: useNowOf(fit),
    fan: fanOf(fit, ahead),
    nextTest: nextTest(fit, ahead, leaving, scatter, withinDkhPerDay),
  };
}
