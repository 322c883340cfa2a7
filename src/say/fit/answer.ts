import { threeFigures } from '../../../shared/recipe/threeFigures';
import { figure, giveOrTake } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import { straightLine } from '../../../shared/log/slope';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { spokenDay } from '../../../shared/log/spokenTime';
import { farAhead, outsideNow } from '../../../shared/log/newest';
import { toxicAmmonia } from '../../../shared/log/toxicAmmonia';
import { toFigures } from '../../../shared/units/digits';
import { USUAL_WINDOW_DAYS } from '../../../shared/log/tankLog';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import { lineTexts } from '../lineTexts';
import { wordFor } from '../../../shared/scenario/words';
import type { LogAnswer } from '../../ask/outcome';
import { isTestDue, testDueH } from '../../ask/testDue';
import { soonerDays } from '../../ask/testsSooner';
import { isUntold } from '../../ask/isUntold';

const WEEK_H = 168;

/** The day so many hours after the log's start, as people say it. */
const dayAfter = ({ fit }: LogAnswer, hours: number): string =>
  spokenDay(localTimeOf(hoursOf(fit.startAt) + hours));

export function useSentence(answer: LogAnswer): string {
  const { useNow, fit } = answer;
  const by = 2 * useNow.standardErrorDkhPerDay;
  if (isUntold(answer)) return say.answer.useUntold(minus(useNow.dkhPerDay), giveOrTake(by));
  return say.answer.use(
    figure(Math.max(0, useNow.dkhPerDay), 2),
    giveOrTake(by),
    dayAfter(answer, fit.endH),
  );
}

const minus = (dkh: number) => `−${figure(-dkh, 2)}`;

/** How much less sure it is with what was typed and no reading checks; empty where that adds nothing. */
export function typedSentence({ useNow }: LogAnswer): string {
  const [by, together] = [useNow.standardErrorDkhPerDay, useNow.withDoubtsDkhPerDay].map((one) =>
    giveOrTake(2 * one),
  );
  return by === together ? '' : say.answer.withTyped(together!);
}

/** Farther off, in σ of the readings' own scatter, one is no part of a line: common practice. */
const STRAY = 3;

/** The straight line through the readings, doses and all: what the keeper sees; none goes through a leap. */
export function slopeSentence({ fit }: LogAnswer): string {
  if (fit.leaps.length > 0) return '';
  const points = fit.points.filter(
    ({ kind, standardised }) => kind === 'alkalinity' && Math.abs(standardised) <= STRAY,
  );
  if (points.length < 2) return '';
  const sigma = points.reduce((sum, point) => sum + point.sigma, 0) / points.length;
  const { slopeDkhPerDay, standardErrorDkhPerDay } = straightLine(
    points.map(({ timeH }) => timeH / 24),
    points.map(({ value }) => value),
    sigma,
  );
  const by = giveOrTake(2 * standardErrorDkhPerDay);
  const moves = figure(Math.abs(slopeDkhPerDay), 2);
  if (moves === figure(0, 2)) return say.answer.level(by);
  return say.answer[slopeDkhPerDay < 0 ? 'fall' : 'rise'](moves, by);
}

/** How alkalinity itself moves, doses and all. */
export function driftSentence({ fan }: LogAnswer): string {
  const { timesH, dkh, spreadDkh } = fan.ahead;
  const week = timesH.findIndex((t) => t >= WEEK_H);
  if (week < 0) return '';
  const [from, to] = [dkh[0]!, dkh[week]!];
  const by = 2 * spreadDkh[week]!;
  return say.answer.drift(figure(from, 1), figure(to, 1), figure(by, 1));
}

export function leavingSentence(answer: LogAnswer, { limits }: Scenario): string {
  const { leaving } = answer;
  const told = say.answer;
  const band = `${figure(limits.alkalinityLowDkh)}–${figure(limits.alkalinityHighDkh)} dKH`;
  if (!leaving) return told.outsideNow(band);
  const percent = Math.round(leaving.odds * 100);
  if (percent < 1) return told.stays(band);
  const { side, oneInTenH, halfH } = leaving;
  if (halfH !== undefined && halfH < 24) {
    return side === 'low' ? told.aboutToFall(band) : told.aboutToRise(band);
  }
  const dates = [
    ...(oneInTenH === undefined
      ? []
      : [told.oneInTen(dayAfter(answer, answer.fit.endH + oneInTenH))]),
    ...(halfH === undefined ? [] : [told.even(dayAfter(answer, answer.fit.endH + halfH))]),
  ].join(', ');
  if (dates === '') return (side === 'low' ? told.leavesBelow : told.leavesAbove)(band, percent);
  return (side === 'low' ? told.leavesBelowBy : told.leavesAboveBy)(band, percent, dates);
}

export function nextTestSentence(answer: LogAnswer, now: string): string {
  const { withinDkhPerDay, alreadyKnown, inDays, reason, dailyTests } = answer.nextTest;
  const told = say.nextTest;
  const wanted = told.wanted(figure(withinDkhPerDay));
  const date = spokenDay(localTimeOf(testDueH(answer)));
  // What was read so long ago says nothing of the water as it stands.
  if (isTestDue(answer, now)) return told.overdue(date);
  const sooner = soonerDays(answer);
  if (sooner !== undefined) return sooner === 0 ? told.again : told.outside;
  if (reason === 'known') {
    return dailyTests !== undefined && dailyTests < inDays - 1
      ? told.onOrDaily(date, wanted, dailyTests)
      : told.on(date, wanted);
  }
  if (alreadyKnown && reason === 'weekly') return told.known(wanted);
  const due = reason === 'leaving' ? told.beforeLeaving(date) : told.weekly(date);
  if (alreadyKnown) return due;
  const daily = dailyTests === undefined ? told.notYet(wanted) : told.daily(dailyTests, wanted);
  return `${due} ${daily}`;
}

type Dose = LogAnswer['habits']['doses'][number];

const habitDose = ({ additive, gramsEach, everyDays }: Dose): string =>
  say.answer.habitDose(figure(threeFigures(gramsEach)), wordFor(additive), everyDays);

/** "8.63 g sodium bicarbonate a day, 4 g calcium chloride every 2 days". */
export const habitDoses = (doses: readonly Dose[]): string => doses.map(habitDose).join(', ');

/** What the forecast takes to go on by hand; empty when nothing does. */
export function habitSentence({ habits: { doses, change } }: LogAnswer): string {
  const poured = doses.map(habitDose);
  const changed = change ? [say.answer.habitChange(figure(change.percent), change.everyDays)] : [];
  const all = [...poured, ...changed];
  return all.length === 0 ? '' : say.answer.habit(all.join(', '));
}

/** Every newest reading that is outside the limits, each in a sentence. */
export const outsideSentences = (plan: Scenario, readings: readonly Reading[]): string[] => [
  ...ammoniaSentences(plan, readings),
  ...outsideNow(plan, readings).map(({ band: { id, low, high }, value, at }) => {
    const { name, unit } = lineTexts[id];
    const withUnit = (text: string) => `${text} ${unit}`.trim();
    const band = withUnit(`${figure(low)}–${figure(high)}`);
    return say.answer.newestOutside(name, withUnit(figure(value)), spokenDay(at), band);
  }),
];

const SOON_HARMFUL: readonly string[] = ['ph', 'salinity', 'temperature'];

/** Whether what is outside may harm within hours: then a failure is likelier than a slow drift. */
export const pressing = (plan: Scenario, readings: readonly Reading[]): boolean =>
  toxicAmmonia(plan, readings) !== undefined ||
  outsideNow(plan, readings).some(({ band: { id } }) => SOON_HARMFUL.includes(id));

/** How much of the newest ammonia harms, where that is too much: it stands first. */
function ammoniaSentences(plan: Scenario, readings: readonly Reading[]): string[] {
  const found = toxicAmmonia(plan, readings);
  if (!found) return [];
  const { at, totalMgPerL, unionisedMgPerL, phNbs, isPhRead } = found;
  const told = say.answer;
  const ph = isPhRead ? figure(phNbs) : told.ammoniaPh(figure(phNbs));
  const toxic = figure(toFigures(unionisedMgPerL, 2));
  const limit = figure(plan.limits.unionisedAmmoniaMgPerL);
  return [told.ammonia(figure(totalMgPerL), spokenDay(at), toxic, ph, limit)];
}

/** That the newest reading stands alone, for its date. */
export function farAheadSentences(all: readonly Reading[]): string[] {
  const far = farAhead(all, USUAL_WINDOW_DAYS);
  return far ? [say.farAhead(far.at.slice(0, 10), figure(far.days, 0))] : [];
}
