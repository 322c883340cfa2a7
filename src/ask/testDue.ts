import { hoursOf } from '../../shared/log/localTime';
import type { LogAnswer } from './outcome';

type Told = Pick<LogAnswer, 'fit' | 'nextTest'>;

const DAY_H = 24;

/** When the next test is due, h since 1970 by the clock beside the tank. */
export const testDueH = ({ fit, nextTest }: Told): number =>
  hoursOf(fit.startAt) + fit.endH + nextTest.inDays * DAY_H;

/** Whether that day has passed by now, a local time. */
export const isTestDue = (told: Told, now: string): boolean =>
  hoursOf(now) > testDueH(told) + DAY_H;
