import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { say } from '../../../shared/words/fit';

const LEAST_READINGS = 2;
const LEAST_DAYS = 1;

/** Why a log cannot be fitted yet; nothing when it can. */
export function tooLittle(log: readonly Reading[]): string | undefined {
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  if (tested.length < LEAST_READINGS) {
    return tested.length === 0 ? say.tooLittle.none : say.tooLittle.one;
  }
  const times = tested.map(({ at }) => hoursOf(at));
  const hours = times.reduce((a, b) => Math.max(a, b)) - times.reduce((a, b) => Math.min(a, b));
  return hours < LEAST_DAYS * 24 ? say.tooLittle.tooClose(hours.toFixed(0)) : undefined;
}
