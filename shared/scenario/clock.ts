/** Times of day in a trial, whose hour 0 may fall at any clock hour. Slack for rounding, in days. */
const SLACK = 1e-12;

/** Closer than this to a moment is that moment, h (4 µs). */
export const INSTANT_H = 1e-9;

/** Hours from the start of a trial at which a day shows a clock hour; day 1 is the first. */
export const momentH = ({ day, hour }: { day: number; hour: number }, clockHour: number): number =>
  (day - 1) * 24 + hour - clockHour;

/** The first moment after `timeH` at which the clock shows `hour`. */
export function nextDailyTimeH(timeH: number, hour: number, clockHour: number): number {
  const days = Math.floor((timeH + clockHour - hour) / 24 + SLACK) + 1;
  return days * 24 + hour - clockHour;
}

/** The latest hour of a day that can be set. */
const LAST_HOUR = 23.99;

/** A moment as a calendar has it, by the hours since day 1 began; the last half minute of a day is the next one's. */
export function calendarOf(sinceMidnightH: number): { day: number; hour: number } {
  const day = Math.floor(sinceMidnightH / 24);
  const hour = Math.max(0, sinceMidnightH - 24 * day);
  return hour > LAST_HOUR ? { day: day + 2, hour: 0 } : { day: day + 1, hour };
}
