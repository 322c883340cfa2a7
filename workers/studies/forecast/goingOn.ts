import { calendarOf } from '../../../shared/scenario/clock';
import type { Scenario } from '../../../shared/scenario/schema';
import type { ByHand, Habits } from './habit';

/** The schema lets a plan hold so many. */
const MOST_RESPONSES = 12;

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
  return Array.from({ length: count }, (_, i) =>
    calendarOf(start.clockHour + first + i * everyH - fromH),
  );
}

/** A tank with what is poured in by hand in its days, and nothing else poured. */
export const handDosed = (now: Scenario, { doses, fromH }: ByHand): Scenario => ({
  ...now,
  additions: doses.flatMap((dose) =>
    again(dose, fromH, now).map((when) => ({
      ...when,
      additive: dose.additive,
      grams: dose.gramsEach,
    })),
  ),
});

/** A tank with what is poured in by hand for so many days ahead, however long it is itself run. */
export const asItGoesOn = (
  { now, byHand }: { readonly now: Scenario; readonly byHand?: ByHand | undefined },
  days: number,
): Scenario => ({
  ...now,
  additions: byHand ? handDosed({ ...now, days }, byHand).additions : [],
});

/** The tank with all that the habits bring. */
export function goingOn(now: Scenario, { doses, change }: Habits, fromH: number): Scenario {
  const changes = change ? again(change, fromH, now) : [];
  const byHand = changes.length > 0 && changes.length <= MOST_RESPONSES;
  return {
    ...handDosed(now, { doses, fromH }),
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
