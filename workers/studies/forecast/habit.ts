import { extent, mean, median, sum } from 'd3-array';
import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import type { AdditiveId } from '../../../shared/species/additives';

/** What the log shows being poured in again and again. */
export interface Dose {
  readonly additive: AdditiveId;
  readonly gramsEach: number;
  /** A half where it is done twice a day. */
  readonly everyDays: number;
  /** Hours since the start of the log of the latest dose. */
  readonly lastH: number;
}

/** Doses that go on, and the hour of the log at which the tank stands. */
export interface ByHand {
  readonly doses: readonly Dose[];
  readonly fromH: number;
}

/** Water changed again and again. */
export interface Change {
  readonly percent: number;
  readonly everyDays: number;
  readonly lastH: number;
}

/** What is done by hand, and will be done again unless the log shows that it has been given up. */
export interface Habits {
  readonly doses: readonly Dose[];
  readonly change: Change | undefined;
}

/** Fewer times are no habit; what was due twice over has been given up. */
const LEAST_TIMES = 3;
const GIVEN_UP_AFTER = 2.5;
/** Sooner than this it is done more than once a day; sooner still, in parts of one time. */
const OFTENER_H = 18;
const AT_ONCE_H = 4;
/** So many times as much is the same amount, as a scoop is level. */
const ALIKE = 1.1;
const MOST_PERCENT = 90;

interface Done {
  readonly timeH: number;
  readonly amount: number;
}

/** Days from one time to the next, by the newest gaps; morning and evening are not twelve hours apart. */
function everyDaysOf(gapsH: readonly number[], gapH: number): number {
  const isOftener = gapH >= AT_ONCE_H && gapH < OFTENER_H;
  if (!isOftener) return Math.max(1, Math.round(gapH / 24));
  const withinADay = mean(gapsH.filter((gap) => gap < OFTENER_H))!;
  return 1 / Math.round(24 / withinADay);
}

/** How much, how often, since when; undefined when it is no habit. */
function rhythmOf(done: readonly Done[], endH: number) {
  const gapsH = done
    .slice(1)
    .map(({ timeH }, i) => timeH - done[i]!.timeH)
    .slice(-LEAST_TIMES);
  const gapH = median(gapsH) ?? 0;
  const lastH = done.at(-1)?.timeH ?? -Infinity;
  if (done.length < LEAST_TIMES || gapH <= 0 || endH - lastH > GIVEN_UP_AFTER * gapH) {
    return undefined;
  }
  const everyDays = everyDaysOf(gapsH, gapH);
  const newest = done.slice(-LEAST_TIMES).map(({ amount }) => amount);
  const [least, most] = extent(newest) as [number, number];
  if (most <= ALIKE * least) return { each: median(newest)!, everyDays, lastH };
  // All that was done after the first time, over the time that it took.
  const all = sum(done.slice(1), ({ amount }) => amount);
  return { each: (all * everyDays * 24) / (lastH - done[0]!.timeH), everyDays, lastH };
}

/** Whoever doses by hand goes on as the log shows, but for what was poured until something took its place. */
export function habitsOf(
  readings: readonly Reading[],
  startAt: string,
  endH: number,
  replacedAt = '',
): Habits {
  const timeOf = ({ at }: Reading) => hoursOf(at) - hoursOf(startAt);
  const poured = readings.filter(({ at, additive, grams }) => additive && grams && at > replacedAt);
  const changed = readings.filter(({ waterChangePercent }) => waterChangePercent);
  const change = rhythmOf(
    changed.map((reading) => ({ timeH: timeOf(reading), amount: reading.waterChangePercent! })),
    endH,
  );
  return {
    doses: [...new Set(poured.map(({ additive }) => additive!))].flatMap((additive) => {
      const own = poured.filter((reading) => reading.additive === additive);
      const rhythm = rhythmOf(
        own.map((reading) => ({ timeH: timeOf(reading), amount: reading.grams! })),
        endH,
      );
      return rhythm ? [{ additive, gramsEach: rhythm.each, ...rhythm }] : [];
    }),
    change: change && { ...change, percent: Math.min(MOST_PERCENT, Math.round(change.each)) },
  };
}
