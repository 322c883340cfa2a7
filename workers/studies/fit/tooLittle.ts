import { figure } from '../../../shared/words/figure';
import { extent } from 'd3-array';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { LONGEST_FIT_DAYS } from '../../../shared/log/tankLog';
import { say } from '../../../shared/words/fit';

const LEAST_READINGS = 2;
const LEAST_DAYS = 1;

/** Why a log cannot be fitted yet; nothing when it can. */
export function tooLittle(log: readonly Reading[]): string | undefined {
  const [from, to] = extent(log, ({ at }) => hoursOf(at));
  const days = (to! - from!) / 24;
  if (days > LONGEST_FIT_DAYS) {
    const dateOf = (hours: number) => localTimeOf(hours).slice(0, 10);
    return say.tooFar(figure(days, 0), dateOf(from!), dateOf(to!));
  }
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  if (tested.length < LEAST_READINGS) {
    return tested.length === 0 ? say.tooLittle.none : say.tooLittle.one;
  }
  const [first, last] = extent(tested, ({ at }) => hoursOf(at));
  const hours = last! - first!;
  return hours < LEAST_DAYS * 24 ? say.tooLittle.tooClose(figure(hours, 0)) : undefined;
}
