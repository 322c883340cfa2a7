import ical, { ICalAlarmType, ICalEventRepeatingFreq } from 'ical-generator';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import type { Scenario } from '../../shared/scenario/schema';
import { figure } from '../../shared/words/figure';
import { say } from '../../shared/words/reminders';
import type { LogAnswer } from '../ask/outcome';
import { testDueH } from '../ask/testDue';

/** What a calendar is to remind of; times by the clock beside the tank. */
interface Reminder {
  /** The same for the same thing, so that a newer file takes the place of an older. */
  readonly id: string;
  readonly at: string;
  readonly what: string;
  readonly why: string;
  readonly everyDays?: number;
}

const DAY_H = 24;
const LASTS_H = 0.25;

/** On the day that the log names, at the hour of the newest test; in an hour where that is past. */
function nextTest(answer: LogAnswer, now: string): string {
  const dayH = Math.floor(testDueH(answer) / DAY_H) * DAY_H;
  const atH = dayH + ((hoursOf(answer.fit.startAt) + answer.nextTest.testedAtH) % DAY_H);
  return localTimeOf(Math.max(atH, Math.ceil(hoursOf(now)) + 1));
}

/** What comes next for a tank: its test, and the reservoir where it is refilled by hand. */
export function remindersOf(
  tank: { readonly id: string; readonly name: string },
  plan: Scenario,
  answer: LogAnswer,
  now: string,
): Reminder[] {
  const { reservoirL, refillEveryDays } = plan.topOff;
  const test: Reminder = {
    ...{ id: `${tank.id}-test`, at: nextTest(answer, now) },
    ...{ what: say.test(tank.name), why: say.testWhy },
  };
  if (reservoirL === 0 || refillEveryDays === 0) return [test];
  const refill: Reminder = {
    ...{ id: `${tank.id}-refill`, everyDays: refillEveryDays },
    at: localTimeOf(Math.ceil(hoursOf(now)) + refillEveryDays * DAY_H),
    ...{ what: say.refill(tank.name), why: say.refillWhy(figure(reservoirL), refillEveryDays) },
  };
  return [test, refill];
}

/** Reminders as an iCalendar file (RFC 5545), in floating time: a tank has no time zone. */
export function calendarText(name: string, reminders: readonly Reminder[], now: string): string {
  // The library reads a moment by its UTC hands.
  const moment = (local: string, laterH = 0) => new Date((hoursOf(local) + laterH) * 3_600_000);
  const calendar = ical({ name, prodId: '//paper-reef//reminders//EN' });
  for (const { id, at, what, why, everyDays } of reminders) {
    calendar.createEvent({
      ...{ id, summary: what, description: why, floating: true },
      ...{ start: moment(at), end: moment(at, LASTS_H), stamp: moment(now) },
      sequence: Math.floor(hoursOf(now)),
      alarms: [{ type: ICalAlarmType.display, trigger: 0 }],
      ...(everyDays && {
        repeating: { freq: ICalEventRepeatingFreq.DAILY, interval: everyDays },
      }),
    });
  }
  return calendar.toString();
}
