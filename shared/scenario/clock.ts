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
