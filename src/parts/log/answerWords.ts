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
  return `The corals take ${useNow.dkhPerDay.toFixed(2)} ± ${by.toFixed(2)} dKH a day on ${dayAfter(answer, fit.endH)}.`;
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
  const by = (2 * standardErrorDkhPerDay).toFixed(2);
  const word = slopeDkhPerDay < 0 ? 'fall' : 'rise';
  return `The readings ${word} by ${Math.abs(slopeDkhPerDay).toFixed(2)} ± ${by} dKH a day.`;
}

/** How alkalinity itself moves, doses and all. */
export function driftSentence({ fan, fit }: LogAnswer): string {
  const now = fan.timesH.findIndex((t) => t >= fit.endH);
  const week = fan.timesH.findIndex((t) => t >= fit.endH + 168);
  const [from, to] = [fan.dkh[now]!, fan.dkh[week]!];
  const by = 2 * fan.spreadDkh[week]!;
  return `With today’s plan alkalinity goes from ${from.toFixed(1)} to ${to.toFixed(1)} ± ${by.toFixed(1)} dKH in a week.`;
}

export function leavingSentence(answer: LogAnswer, { limits }: Scenario): string {
  const { leaving } = answer;
  const band = `${limits.alkalinityLowDkh}–${limits.alkalinityHighDkh} dKH`;
  if (!leaving) return `It is outside your ${band} now.`;
  const percent = Math.round(leaving.odds * 100);
  if (percent < 1)
    return `It stays inside your ${band} for four weeks in nearly every fit that the log allows.`;
  const side = leaving.side === 'low' ? 'below' : 'above';
  const dates = [
    ...(leaving.oneInTenH === undefined
      ? []
      : [`one chance in ten by ${dayAfter(answer, leaving.oneInTenH)}`]),
    ...(leaving.halfH === undefined
      ? []
      : [`an even chance by ${dayAfter(answer, leaving.halfH)}`]),
  ];
  const soon = leaving.halfH !== undefined && leaving.halfH < answer.fit.endH + 24;
  if (soon) return `It is about to leave your ${band}, ${side} it.`;
  return `It leaves your ${band} ${side} with ${percent} % chance within four weeks${dates.length > 0 ? `: ${dates.join(', ')}` : ''}.`;
}

export function nextTestSentence(answer: LogAnswer): string {
  const { withinDkhPerDay, known, onceInDays, dailyTests } = answer.nextTest;
  const wanted = `±${withinDkhPerDay} dKH a day`;
  const day = (days: number) => dayAfter(answer, answer.fit.endH + days * 24);
  if (known)
    return `The consumption is known to ${wanted} already. Test weekly, at the same hour (common practice).`;
  if (onceInDays !== undefined) {
    const sooner =
      dailyTests !== undefined && dailyTests < onceInDays - 1
        ? `; a test every day gets there in ${dailyTests} days`
        : '';
    return `Test next on ${day(onceInDays)}, at the same hour: with that the consumption is known to ${wanted}${sooner}.`;
  }
  return dailyTests === undefined
    ? `Four weeks of daily tests would not know the consumption to ${wanted}: ask for less, or test with a finer kit.`
    : `One more test will not do: a test every day for ${dailyTests} days makes the consumption known to ${wanted}.`;
}
