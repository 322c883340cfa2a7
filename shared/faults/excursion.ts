import type { Window } from './windows';

/**
 * Part of the way to a fault's end value at a moment: from 0 as it begins, up by `perH`, to 1 at
 * most, and back down as evenly once it is over.
 */
export function excursion({ fromH, toH }: Window<unknown>, timeH: number, perH: number): number {
  if (timeH <= fromH) return 0;
  const reached = Math.min(1, (Math.min(timeH, toH) - fromH) * perH);
  return timeH <= toH ? reached : Math.max(0, reached - (timeH - toH) * perH);
}

/** So little is no excursion any more. */
const GONE = 1e-4;

/**
 * The same, drawn towards the end value with a time constant, and back with it once it is over: a
 * heater is about as strong as what the tank loses.
 */
export function drift({ fromH, toH }: Window<unknown>, timeH: number, hours: number): number {
  if (timeH <= fromH) return 0;
  const reached = 1 - Math.exp(-(Math.min(timeH, toH) - fromH) / hours);
  const left = timeH <= toH ? reached : reached * Math.exp(-(timeH - toH) / hours);
  return left < GONE && timeH > toH ? 0 : left;
}
