import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import { outsideNow } from '../../shared/log/newest';
import type { LogAnswer } from '../../workers/studies/answerLog';
import type { Correction } from '../../workers/studies/plan/correct';
import type { Offer } from '../../workers/studies/plan/offers';
import { lineJson, named } from './lineJson';
import type { TankAnswer } from './tankAnswer';
import { firstSentence, logSentences, planSentences } from './tankSentences';

/** What is known of the use, as the page writes its ±: two standard errors. */
function useJson({ useNow, fit }: LogAnswer) {
  const { dkhPerDay, standardErrorDkhPerDay, withDoubtsDkhPerDay } = useNow;
  return {
    ...{ dkhPerDay, standardErrorDkhPerDay, withDoubtsDkhPerDay },
    lowDkhPerDay: dkhPerDay - 2 * standardErrorDkhPerDay,
    highDkhPerDay: dkhPerDay + 2 * standardErrorDkhPerDay,
    levelDkh: fit.now.dkh,
    levelStandardErrorDkh: Math.sqrt(fit.now.covariance[0]![0]!),
  };
}

function fitJson({ fit }: LogAnswer) {
  return {
    estimates: fit.estimates.map(({ id, unit, value, standardError }) => ({
      ...{ id, unit, value, standardError },
    })),
    points: fit.points.map(({ kind, timeH, value, expected, standardised }) => ({
      ...{ kind, timeH, standardised },
      ...(kind === 'ph'
        ? { readPhNbs: value, fittedPhNbs: expected }
        : { readDkh: value, fittedDkh: expected }),
    })),
    jump: fit.jump,
  };
}

function answerJson(answer: LogAnswer) {
  const { fit, fan, leaving, nextTest, habits } = answer;
  const at = (hours: number | undefined) =>
    hours === undefined ? undefined : localTimeOf(hoursOf(fit.startAt) + fit.endH + hours);
  const { timesH, dkh, spreadDkh } = fan.ahead;
  return {
    ...{ startAt: fit.startAt, endH: fit.endH, use: useJson(answer), fit: fitJson(answer), habits },
    forecast: timesH.map((timeH, i) => ({
      ...{ afterH: timeH, dkh: dkh[i], standardErrorDkh: spreadDkh[i] },
    })),
    leaving: leaving && {
      ...{ odds: leaving.odds, side: leaving.side },
      ...{ oneInTenAt: at(leaving.oneInTenH), halfAt: at(leaving.halfH) },
    },
    nextTest: { ...nextTest, at: at(nextTest.inDays * 24) },
  };
}

function planJson(offer: Offer) {
  const { id, title, offered, promisedDays, refusal, verdict, recipe, worstDump, scenario } = offer;
  return {
    ...{ id, title, offered, promisedDays, says: planSentences(offer) },
    refusal: refusal?.kind === 'breach' ? lineJson(refusal.breach) : refusal,
    verdict: { insideLimits: verdict.insideLimits, headline: verdict.headline },
    recipe,
    worstDump: worstDump && {
      clockHour: worstDump.clockHour,
      ...{ peakPhNbs: worstDump.peakPh, peakDkh: worstDump.peakDkh },
    },
    scenario,
  };
}

function correctionJson(correction: Correction) {
  if (correction.kind !== 'raise') return correction;
  const { peakPh, ...rest } = correction;
  return { ...rest, peakPhNbs: peakPh };
}

/** A tank's answers for other programs: every number has its unit in its name or beside it. */
export function tankJson(told: TankAnswer) {
  const { tank, plan, counted, answer, plans, chosen, correction, firstChange } = told;
  const { question, offers } = plans;
  return {
    ...{ id: tank.id, name: tank.name, says: logSentences(told) },
    readings: {
      counted: counted.readings.length,
      future: counted.future.length,
      tooOld: counted.tooOld,
      tooMany: counted.tooMany,
    },
    outside: outsideNow(plan, counted.readings).map(({ band: { id, low, high }, at, value }) => ({
      ...{ quantity: id, at, ...named('read', id, value) },
      ...{ ...named('low', id, low), ...named('high', id, high) },
    })),
    answer: typeof answer === 'object' ? answerJson(answer) : undefined,
    plansFor: {
      targetDkh: question.targetDkh,
      useDkhPerDay: question.now.corals.useDkhPerDay,
      giveOrTakeDkhPerDay: question.giveOrTakeDkhPerDay,
    },
    plans: offers.map(planJson),
    correction: { withPlan: chosen.id, says: firstSentence(told), ...correctionJson(correction) },
    firstChange: firstChange.change,
  };
}
