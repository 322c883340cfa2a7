import { say } from '../../shared/words/charts';
/** The stretch of time on view, in hours. */
export interface TimeWindow {
  readonly fromH: number;
  readonly toH: number;
}

export const spans = [
  { id: 'all', label: say.whole, hours: Infinity },
  { id: 'week', label: say.week, hours: 168 },
  { id: 'days', label: say.twoDays, hours: 48 },
] as const;

export type SpanId = (typeof spans)[number]['id'];

/** A stretch of the wanted length around the cursor, kept inside the trial. */
export function windowAround(cursorH: number, spanH: number, totalH: number): TimeWindow {
  if (spanH >= totalH) return { fromH: 0, toH: totalH };
  const fromH = Math.max(0, Math.min(totalH - spanH, cursorH - spanH / 2));
  return { fromH, toH: fromH + spanH };
}
