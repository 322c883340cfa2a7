import { say } from '../words/time';
import { writing } from '../words/writing';
import { hoursOf } from './localTime';

/** "4 March, 10:30". */
export function spokenTime(local: string): string {
  return say.dateAndClock(spokenDay(local), local.slice(11));
}

const dayAndMonth = new Intl.DateTimeFormat(writing.dates, {
  ...{ day: 'numeric', month: 'long', timeZone: 'UTC' },
});

/** "4 March". */
export const spokenDay = (local: string): string => dayAndMonth.format(hoursOf(local) * 3_600_000);

/** "4 March 2026": what may lie years back. */
export const datedDay = (local: string): string => `${spokenDay(local)} ${local.slice(0, 4)}`;

/** "4 March 2026, 10:30". */
export const datedTime = (local: string): string =>
  say.dateAndClock(datedDay(local), local.slice(11));
