import { hoursOf } from '../../shared/log/localTime';
import type { LogAnswer } from './outcome';
import { soonerDays } from './testsSooner';

type Told = Pick<LogAnswer, 'fit' | 'nextTest' | 'now'>;

const DAY_H = 24;

/** When the next test is due, h since 1970 by the clock beside the tank. */
export function testDueH(told: Told): number {
  const { fit, nextTest } = told;
  const startH = hoursOf(fit.startAt);
  const sooner = soonerDays(told);
  const dueH = startH + fit.endH + nextTest.inDays * DAY_H;
  return sooner === undefined ? dueH : Math.min(dueH, startH + nextTest.testedAtH + sooner * DAY_H);
}

/** Whether that day has passed by now, a local time. */
export const isTestDue = (told: Told, now: string): boolean =>
  hoursOf(now) > testDueH(told) + DAY_H;
