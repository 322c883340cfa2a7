import type { TimeWindow } from './timeWindow';

/** How near a chart is looked at: all that stand together follow. */
export interface Zoom {
  /** Below 1 nearer, above 1 farther; what lies at an hour stays where it is. */
  by(atH: number, factor: number): void;
  /** To the stretch between two hours, in either order. */
  to(aH: number, bH: number): void;
}

/** Nearer than this there is nothing more to see: an hour is one point. */
const LEAST_H = 6;

/** A stretch of so many hours that begins at one, or as near to that as the trial allows. */
function inside(fromH: number, hours: number, totalH: number): TimeWindow {
  const span = Math.min(totalH, Math.max(LEAST_H, hours));
  const from = Math.max(0, Math.min(totalH - span, fromH));
  return { fromH: from, toH: from + span };
}

export function zoomed(
  { fromH, toH }: TimeWindow,
  atH: number,
  factor: number,
  totalH: number,
): TimeWindow {
  const span = Math.min(totalH, Math.max(LEAST_H, (toH - fromH) * factor));
  const share = Math.max(0, Math.min(1, (atH - fromH) / (toH - fromH)));
  return inside(atH - share * span, span, totalH);
}

export const brushed = (aH: number, bH: number, totalH: number): TimeWindow =>
  inside(Math.min(aH, bH), Math.abs(bH - aH), totalH);

/** Looks at a part of what is shown now. */
export const zoomOver = (
  shown: () => { readonly window: TimeWindow; readonly totalH: number },
  look: (at: TimeWindow) => void,
): Zoom => ({
  by(atH, factor) {
    const { window, totalH } = shown();
    look(zoomed(window, atH, factor, totalH));
  },
  to: (aH, bH) => look(brushed(aH, bH, shown().totalH)),
});
