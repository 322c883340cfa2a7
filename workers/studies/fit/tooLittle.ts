import { extent } from 'd3-array';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { LONGEST_FIT_DAYS } from '../../../shared/log/tankLog';

/** Why a log cannot be fitted yet; `first` and `last` are dates. */
export type TooLittle =
  | { readonly why: 'none' | 'one' }
  | { readonly why: 'tooClose'; readonly hours: number }
  | {
      readonly why: 'tooFar';
      readonly days: number;
      readonly first: string;
      readonly last: string;
    };

const LEAST_READINGS = 2;
const LEAST_DAYS = 1;

/** Why a log cannot be fitted yet; nothing when it can. */
export function tooLittle(log: readonly Reading[]): TooLittle | undefined {
  const [from, to] = extent(log, ({ at }) => hoursOf(at));
  const days = (to! - from!) / 24;
  if (days > LONGEST_FIT_DAYS) {
    const dateOf = (hours: number) => localTimeOf(hours).slice(0, 10);
    return { why: 'tooFar', days, first: dateOf(from!), last: dateOf(to!) };
  }
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  if (tested.length < LEAST_READINGS) return { why: tested.length === 0 ? 'none' : 'one' };
  const [first, last] = extent(tested, ({ at }) => hoursOf(at));
  const hours = last! - first!;
  return hours < LEAST_DAYS * 24 ? { why: 'tooClose', hours } : undefined;
}
