/** Times of day in a trial, whose hour 0 may fall at any clock hour. Slack for rounding, in days. */
const SLACK = 1e-12;

/** The first moment after `timeH` at which the clock shows `hour`. */
export function nextDailyTimeH(timeH: number, hour: number, clockHour: number): number {
  const days = Math.floor((timeH + clockHour - hour) / 24 + SLACK) + 1;
  return days * 24 + hour - clockHour;
}

/** Whether a daily window of so many hours is open now. */
export function withinDailyWindow(
  timeH: number,
  fromHour: number,
  hours: number,
  clockHour: number,
): boolean {
  const phase = (((timeH + clockHour - fromHour) % 24) + 24 + 24 * SLACK) % 24;
  return phase < hours;
}

/** The moment after `timeH` at which a daily window opens or closes. */
export function nextWindowEdgeH(
  timeH: number,
  fromHour: number,
  hours: number,
  clockHour: number,
): number {
  if (hours >= 24 || hours <= 0) return Infinity;
  return Math.min(
    nextDailyTimeH(timeH, fromHour, clockHour),
    nextDailyTimeH(timeH, (fromHour + hours) % 24, clockHour),
  );
}
