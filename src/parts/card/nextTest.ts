import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import type { LogAnswer } from '../../client/outcome';

const WEEK_DAYS = 7;

/**
 * When to test next, as a local time: within a week and the days that the plan is promised for;
 * sooner when the log says that a test by then makes the consumption known.
 */
export function nextTestAt(
  now: string,
  promisedDays: number,
  answer: Pick<LogAnswer, 'fit' | 'nextTest'> | undefined,
): string {
  const nowH = hoursOf(now);
  const checkH = nowH + Math.min(WEEK_DAYS, promisedDays) * 24;
  if (!answer) return localTimeOf(checkH);
  const toldH = hoursOf(answer.fit.startAt) + answer.fit.endH + answer.nextTest.inDays * 24;
  return localTimeOf(toldH > nowH ? Math.min(checkH, toldH) : checkH);
}
