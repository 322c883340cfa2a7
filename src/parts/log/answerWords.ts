import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import { straightLine } from '../../../shared/log/slope';
import { hoursOf, localTimeOf, spokenDay } from '../../../shared/log/localTime';
import type { Scenario } from '../../../shared/scenario/schema';
import type { LogAnswer } from '../../client/outcome';

/** The day so many hours after the log's start, as people say it. */
const dayAfter = ({ fit }: LogAnswer, hours: number): string =>
  spokenDay(localTimeOf(hoursOf(fit.startAt) + hours));

export function useSentence(answer: LogAnswer): string {
  const { useNow, fit } = answer;
  const by = 2 * useNow.standardErrorDkhPerDay;
  return say.answer.use(figure(useNow.dkhPerDay, 2), figure(by, 2), dayAfter(answer, fit.endH));
}

/** The straight line through the readings, doses and all: what the keeper sees. */
export function slopeSentence({ fit }: LogAnswer): string {
  const points = fit.points.filter(({ kind }) => kind === 'alkalinity');
  if (points.length < 2) return '';
  const sigma = points.reduce((sum, point) => sum + point.sigma, 0) / points.length;
  const { slopeDkhPerDay, standardErrorDkhPerDay } = straightLine(
    points.map(({ timeH }) => timeH / 24),
    points.map(({ value }) => value),
    sigma,
  );
  return say.answer[slopeDkhPerDay < 0 ? 'fall' : 'rise'](
    figure(Math.abs(slopeDkhPerDay), 2),
    figure(2 * standardErrorDkhPerDay, 2),
  );
}

/** How alkalinity itself moves, doses and all. */
export function driftSentence({ fan, fit }: LogAnswer): string {
  const now = fan.timesH.findIndex((t) => t >= fit.endH);
  const week = fan.timesH.findIndex((t) => t >= fit.endH + 168);
  const [from, to] = [fan.dkh[now]!, fan.dkh[week]!];
  const by = 2 * fan.spreadDkh[week]!;
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
  if (halfH !== undefined && halfH < answer.fit.endH + 24) {
    return side === 'low' ? told.aboutToFall(band) : told.aboutToRise(band);
  }
  const dates = [
    ...(oneInTenH === undefined ? [] : [told.oneInTen(dayAfter(answer, oneInTenH))]),
    ...(halfH === undefined ? [] : [told.even(dayAfter(answer, halfH))]),
  ].join(', ');
  if (dates === '') return (side === 'low' ? told.leavesBelow : told.leavesAbove)(band, percent);
  return (side === 'low' ? told.leavesBelowBy : told.leavesAboveBy)(band, percent, dates);
}

export function nextTestSentence(answer: LogAnswer): string {
  const { withinDkhPerDay, known, onceInDays, dailyTests } = answer.nextTest;
  const told = say.nextTest;
  const wanted = told.wanted(figure(withinDkhPerDay));
  if (known) return told.known(wanted);
  if (onceInDays !== undefined) {
    const date = dayAfter(answer, answer.fit.endH + onceInDays * 24);
    return dailyTests !== undefined && dailyTests < onceInDays - 1
      ? told.onOrDaily(date, wanted, dailyTests)
      : told.on(date, wanted);
  }
  return dailyTests === undefined ? told.never(wanted) : told.daily(dailyTests, wanted);
}
