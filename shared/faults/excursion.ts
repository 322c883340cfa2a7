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
