import { dayOf } from '../../shared/verdict/measures';

/** "day 3, 14:00" */
export function timeText(timeH: number, clockHour: number): string {
  const minutes = Math.round(timeH * 60) + clockHour * 60;
  const clock = ((minutes % 1440) + 1440) % 1440;
  const two = (n: number) => String(n).padStart(2, '0');
  return `day ${dayOf(timeH)}, ${two(Math.floor(clock / 60))}:${two(clock % 60)}`;
}
