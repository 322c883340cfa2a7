/** Part of the hour around `middle` that lies between two moments. */
const overlap = (middle: number, from: number, to: number): number =>
  Math.max(0, Math.min(middle + 0.5, to) - Math.max(middle - 0.5, from));

/**
 * How much of the hour around a moment a daily window is open, 0 to 1. A process cannot stop the
 * integrator at its switch as a device can, so its light comes up over an hour; the day's sum is
 * that of the window exactly.
 */
export function hoursOpenAround(clockH: number, fromHour: number, hours: number): number {
  const now = (((clockH - fromHour) % 24) + 24) % 24;
  const dayBefore = overlap(now, -24, hours - 24);
  return dayBefore + overlap(now, 0, hours) + overlap(now, 24, hours + 24);
}
