import { median } from 'd3-array';
import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import type { Scenario } from '../../../shared/scenario/schema';
import type { AdditiveId } from '../../../shared/species/additives';

/** What the log shows being poured in again and again. */
export interface Dose {
  readonly additive: AdditiveId;
  readonly gramsEach: number;
  readonly everyDays: number;
  /** Hours since the start of the log of the latest dose. */
  readonly lastH: number;
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
/** The schema lets a plan hold so many. */
const MOST_ADDITIONS = 200;
const MOST_RESPONSES = 12;
const MOST_PERCENT = 90;

interface Done {
  readonly timeH: number;
  readonly amount: number;
}

/** How much, how often, since when; undefined when it is no habit. */
function rhythmOf(done: readonly Done[], endH: number) {
  const gaps = done.slice(1).map(({ timeH }, i) => timeH - done[i]!.timeH);
  const gapH = median(gaps) ?? 0;
  const lastH = done.at(-1)?.timeH ?? -Infinity;
  if (done.length < LEAST_TIMES || gapH <= 0 || endH - lastH > GIVEN_UP_AFTER * gapH) {
    return undefined;
  }
  // All that was done after the first time, over the time that it took.
  const sum = done.slice(1).reduce((total, { amount }) => total + amount, 0);
  const everyDays = Math.max(1, Math.round(gapH / 24));
  return { each: (sum * everyDays * 24) / (lastH - done[0]!.timeH), everyDays, lastH };
}

/**
 * Whoever doses by hand goes on as the log shows, but for what was poured until a turn: the turn stands
 * in for it, and says so.
 */
export function habitsOf(
  readings: readonly Reading[],
  startAt: string,
  endH: number,
  turnedAt = '',
): Habits {
  const timeOf = ({ at }: Reading) => hoursOf(at) - hoursOf(startAt);
  const poured = readings.filter(({ at, additive, grams }) => additive && grams && at > turnedAt);
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
    change: change && { percent: Math.min(MOST_PERCENT, Math.round(change.each)), ...change },
  };
}

/** The plan's water changes, or those that the log shows where the plan has none. */
export const changedBy = (
  { change }: Habits,
  planned: Scenario['waterChanges'],
): Scenario['waterChanges'] =>
  planned.percent === 0 && change
    ? { ...planned, percent: change.percent, everyDays: change.everyDays }
    : planned;

/** When something comes round again, by the day and the hour of a run that begins at that hour. */
function again(
  { everyDays, lastH }: { readonly everyDays: number; readonly lastH: number },
  fromH: number,
  { start, days }: Scenario,
): { day: number; hour: number }[] {
  const everyH = everyDays * 24;
  const first = lastH + everyH * Math.max(1, Math.ceil((fromH - lastH) / everyH));
  const count = Math.max(0, Math.ceil((fromH + days * 24 - first) / everyH));
  return Array.from({ length: count }, (_, i) => {
    const sinceMidnight = start.clockHour + first + i * everyH - fromH;
    const day = Math.floor(sinceMidnight / 24) + 1;
    return { day, hour: Math.min(23.99, sinceMidnight - (day - 1) * 24) };
  });
}

/** The tank with what the habits bring, each on its own day; it begins at that hour of the log. */
export function goingOn(now: Scenario, { doses, change }: Habits, fromH: number): Scenario {
  const additions = doses.flatMap((dose) =>
    again(dose, fromH, now).map((when) => ({
      ...when,
      additive: dose.additive,
      grams: dose.gramsEach,
    })),
  );
  const changes = change ? again(change, fromH, now) : [];
  const byHand = changes.length > 0 && changes.length <= MOST_RESPONSES;
  return {
    ...now,
    additions: additions.slice(0, MOST_ADDITIONS),
    ...(byHand && {
      waterChanges: { ...now.waterChanges, percent: 0 },
      responses: changes.map((when) => response(when, change!.percent)),
    }),
  };
}

/** A water change on a day of its own; what other responses need stays as it usually is. */
const response = (
  when: { day: number; hour: number },
  percent: number,
): Scenario['responses'][number] => ({
  ...{ kind: 'extraChange', ...when, percent, hours: 1 },
  ...{ kLaPerH: 4, co2Ppm: 5000, co2GramsEach: 2, portions: 4 },
});
