import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import { outsideNow } from '../../shared/log/newest';
import { testDueH } from '../ask/testDue';
import type { LogAnswer } from '../../workers/studies/answerLog';
import type { Correction } from '../../workers/studies/plan/correct';
import type { ToldOffer } from '../say/plan/offer';
import { turnRecipe } from '../say/turn/turnRecipe';
import { lineJson, named } from './lineJson';
import { soonestOut } from '../say/stock/runsOut';
import { seasonAnswerJson } from './seasonJson';
import { steeredJson } from './steeredJson';
import type { TankAnswer } from './tankAnswer';
import { orderBy } from '../../shared/recipe/orderBy';
import { allPaces } from '../say/stock/order';
import {
  awayTold,
  firstSentence,
  logSentences,
  ordersTold,
  planSentences,
  seasonTold,
  turnTold,
} from './tankSentences';

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
    nextTest: { ...nextTest, at: localTimeOf(testDueH(answer)) },
  };
}

function planJson(offer: ToldOffer) {
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

/** What is turned, in the lever's own unit: mL a day, g/L, L an hour of the reactor's drip, or g each time. */
const units = {
  pump: 'mlPerDay',
  channel: 'mlPerDay',
  mix: 'gPerL',
  drip: 'lPerH',
  hand: 'g',
} as const;

function turnJson(told: TankAnswer) {
  const { turn } = told.turn;
  const says = turnTold(told);
  const steered = steeredJson(told.steer);
  if (turn.kind === 'nothingRuns') return { kind: turn.kind, says, steered };
  if (turn.kind === 'refused') {
    const { refusal, nearest, kind } = turn;
    const reason =
      refusal.kind === 'breach'
        ? { kind: refusal.kind, firstH: refusal.firstH, line: lineJson(refusal.breach) }
        : refusal;
    return { kind, says, refusal: reason, nearest, steered };
  }
  const { turned } = turn;
  const { lever, from, to, low, high, peakPh, also, worstDump, dkh, first } = turned;
  const { promisedDays, endedBy, refusal, levelDkh, targetDkh, settled, pumps } = turned;
  const { largestDailyDkh, allowedDkh, scenario, plan, heldPlan, apart, dose, insteadOf } = turned;
  const unit = units[lever];
  return {
    ...{ kind: turn.kind, says, lever, unit, from, to, low, high, dose, insteadOf },
    first: first.kind === 'less' ? { ...first, unit } : first,
    ...{ promisedDays, endedBy, refusal, levelDkh, targetDkh, settled, pumps },
    largestDailyDkh,
    ...{ allowedDkh, scenario, plan, heldPlan, peakPhNbs: peakPh, also: also.map(lineJson) },
    recipe: turnRecipe(turned, told.turn),
    worstDump: worstDump && {
      clockHour: worstDump.clockHour,
      ...{ peakPhNbs: worstDump.peakPh, peakDkh: worstDump.peakDkh },
    },
    ...{ hourlyDkh: dkh, steered },
    apart: apart && {
      pumps: apart.pumps.map(({ name, mlPerDay }) => ({ pumpName: name, dailyMl: mlPerDay })),
      ...{ onDay: apart.day, calciumMgPerL: apart.calciumMgPerL },
      togetherCalciumMgPerL: apart.togetherMgPerL,
    },
  };
}

function awayJson(told: TankAnswer) {
  if (!told.absence) return undefined;
  const { asked, looks } = told.absence;
  const { days, comesDays, vessels, topUps, provided, odds, wayOut, margins } = asked.away;
  const { kind, insideDays, breach, endsDkh, anyway, scenario, refillEveryDays } = provided;
  const { asSet, low, high } = endsDkh;
  return {
    ...{ days, visitDays: asked.question.visitDays, comesDays, says: awayTold(told) },
    needs: vessels.map((vessel) => {
      const { name, hasL, usedL, needL, leaveL, harms, dailyL, lastsDays, surelyDays } = vessel;
      return {
        ...{ name, hasL, usedL, needL, leaveL, dailyL, lastsDays, surelyDays },
        ...{ mostL: vessel.harmless?.litres, mostWhy: vessel.harmless?.why, doesHarm: harms },
      };
    }),
    topUps: topUps.map(({ pump, with: what, mostL }) => ({
      pumpName: pump === undefined ? undefined : scenario.dosers[pump]!.name,
      ...{ with: what, mostL },
    })),
    wayOut,
    margins: { evaporationShare: margins.evaporation, deliveryShare: margins.delivery },
    left: {
      ...{ kind, insideDays, refillEveryDays, breach: breach && lineJson(breach) },
      ...{ endsDkh: asSet, lowestEndsDkh: low, highestEndsDkh: high },
      ...{ anyway: anyway.map(lineJson), scenario },
    },
    odds: {
      ...{
        members: odds.members,
        days: odds.days,
        leaveShare: odds.leaveShare,
        dryShare: odds.dryShare,
      },
      lines: odds.lines.map(({ id, share }) => ({ id, passedShare: share })),
    },
    failures: looks.failures.map(({ fault, clockHour, noticedH, followedH, first, harm }) => ({
      kind: fault.kind,
      pumpName: fault.kind.startsWith('doser') ? scenario.dosers[fault.pump - 1]?.name : undefined,
      endTempC: fault.kind === 'heater' ? fault.endTempC : undefined,
      ...{ clockHour, noticedH, followedH },
      first: first && { id: first.line.id, ...first.reach },
      harm: harm && { id: harm.line.id, ...harm.reach },
    })),
  };
}

/** What is left and by when to order it; days are from when it was counted. */
function ordersJson(told: TankAnswer) {
  const { log } = told.tank;
  const paces = allPaces(told.usedUp?.supplies ?? [], told.counted.readings);
  return log.supplies.flatMap(({ id, left, countedAt }) => {
    const pace = paces.find((one) => one.id === id);
    const found = pace && orderBy(left, pace, log.shopDays);
    if (!found) return [];
    const { perDay, mostPerDay, leastPerDay } = pace;
    const grams =
      id === 'tests'
        ? {}
        : { leftG: left, dailyG: perDay, mostDailyG: mostPerDay, leastDailyG: leastPerDay };
    return [{ id, countedAt, ...grams, ...found }];
  });
}

/** A tank's answers for other programs: every number has its unit in its name or beside it. */
export function tankJson(told: TankAnswer) {
  const { tank, plan, counted, answer, question, offers, chosen, correction } = told;
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
    answer: 'why' in answer ? undefined : answerJson(answer),
    turn: turnJson(told),
    away: awayJson(told),
    orders: {
      ...{ says: ordersTold(told), supplies: ordersJson(told) },
      runsOutFirst: told.usedUp && soonestOut(tank.log, told.usedUp, counted, told.now),
    },
    season: told.season && { says: seasonTold(told), ...seasonAnswerJson(told.season) },
    plansFor: {
      targetDkh: question.targetDkh,
      useDkhPerDay: question.now.corals.useDkhPerDay,
      giveOrTakeDkhPerDay: question.giveOrTakeDkhPerDay,
    },
    plans: offers.map(planJson),
    correction: { withPlan: chosen.id, says: firstSentence(told), ...correctionJson(correction) },
  };
}
