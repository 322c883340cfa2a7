import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import type { LogAnswer } from '../ask/outcome';
import { testDueH } from '../ask/testDue';

const WEEK_DAYS = 7;

/** A raise is tested on its third day. */
const RAISE_DAYS = 2;

/**
 * When to test next, as a local time: within a week and the days that the plan is promised for;
 * sooner while the water is being raised, or when the log says that a test makes the consumption
 * known by then.
 */
export function nextTestAt(
  now: string,
  { promisedDays, raising }: { readonly promisedDays: number; readonly raising: boolean },
  answer: Pick<LogAnswer, 'fit' | 'nextTest' | 'now'> | undefined,
): string {
  const nowH = hoursOf(now);
  const checkH = nowH + Math.min(WEEK_DAYS, promisedDays, raising ? RAISE_DAYS : Infinity) * 24;
  if (!answer) return localTimeOf(checkH);
  // What is due already is due now.
  return localTimeOf(Math.min(checkH, Math.max(nowH, testDueH(answer))));
}
