import { believable } from './believable';
import { hoursOf, localTimeOf } from './localTime';
import type { Reading } from './reading';
import { LONGEST_FIT_DAYS, USUAL_WINDOW_DAYS, type TankLog } from './tankLog';

/** Daily tests of five years; more make the answer slower, not better. */
const MOST_LINES = 2000;
/** Nobody reads more in a minute: a file of junk would drown the rest. */
const MOST_A_MINUTE = 20;
/** The lines of a log that an answer rests on, and why others are left out. */
export interface Counted {
  readonly readings: readonly Reading[];
  /** Everything dated up to now, whether it counts or is too old. */
  readonly happened: readonly Reading[];
  /** Dated later than now: they have not happened. */
  readonly future: readonly Reading[];
  /** Before the longest stretch that can be looked back over, though asked for. */
  readonly tooOld: number;
  /** More than can be counted, in one minute or altogether: the newest are. */
  readonly tooMany: number;
}

function thinned(readings: readonly Reading[]): Reading[] {
  const seen = new Map<string, number>();
  const newestFirst = readings.toReversed().filter(({ at }) => {
    const count = (seen.get(at) ?? 0) + 1;
    seen.set(at, count);
    return count <= MOST_A_MINUTE;
  });
  return newestFirst.slice(0, MOST_LINES).reverse();
}

export function countedReadings(
  { readings, fitFrom, heldAt }: Pick<TankLog, 'readings' | 'fitFrom' | 'heldAt'>,
  now: string,
): Counted {
  const { last } = believable(now);
  const happened = readings.filter(({ at }) => at <= last);
  const future = readings.filter(({ at }) => at > last);
  const latest = happened.at(-1)?.at;
  if (latest === undefined) return { readings: [], happened, future, tooOld: 0, tooMany: 0 };
  const ago = (days: number) => localTimeOf(hoursOf(latest) - days * 24);
  const wanted = happened.filter(
    ({ at }) => at >= (fitFrom || ago(USUAL_WINDOW_DAYS)) && (!heldAt || at <= heldAt),
  );
  const within = wanted.filter(({ at }) => at >= ago(LONGEST_FIT_DAYS));
  const newest = thinned(within);
  return {
    readings: newest,
    happened,
    future,
    tooOld: wanted.length - within.length,
    tooMany: within.length - newest.length,
  };
}
