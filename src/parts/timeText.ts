import { say } from '../../shared/words/time';
/** "day 3, 14:00": calendar days from the one on which the trial starts; midnight ends a day. */
export function timeText(timeH: number, clockHour: number): string {
  const minutes = Math.round(timeH * 60) + clockHour * 60;
  const two = (n: number) => String(n).padStart(2, '0');
  if (timeH > 0 && minutes % 1440 === 0) return say.onDay(minutes / 1440, '24:00');
  const clock = `${two(Math.floor((minutes % 1440) / 60))}:${two(minutes % 60)}`;
  return say.onDay(Math.floor(minutes / 1440) + 1, clock);
}
