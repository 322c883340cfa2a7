import { toDecimals } from '../../shared/units/digits';
import { figure } from '../../shared/words/figure';
import { say } from '../../shared/words/time';

const two = (n: number) => String(n).padStart(2, '0');

/** The day of the calendar, the first is 1, and the clock: midnight begins a day. */
function dayAndClock(timeH: number, clockHour: number): { day: number; clock: string } {
  const minutes = Math.round((timeH + clockHour) * 60);
  const clock = `${two(Math.floor((minutes % 1440) / 60))}:${two(minutes % 60)}`;
  return { day: Math.floor(minutes / 1440) + 1, clock };
}

/** "day 1, 14:05". */
export function momentText(timeH: number, clockHour: number): string {
  const { day, clock } = dayAndClock(timeH, clockHour);
  return say.onDay(day, clock);
}

/** "14:05", and from the second day on "day 2, 14:05". */
export function clockText(timeH: number, clockHour: number): string {
  const { day, clock } = dayAndClock(timeH, clockHour);
  return day === 1 ? clock : say.onDay(day, clock);
}

/** "38 min", "4.2 h", "3.1 days". */
export function spanText(hours: number): string {
  if (hours < 1.95) return say.minutes(String(Math.max(1, Math.round(hours * 60))));
  if (hours < 48) return say.hours(figure(toDecimals(hours, 1)));
  return say.days(figure(toDecimals(hours / 24, 1)));
}
