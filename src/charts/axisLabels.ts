import type { AxisMark } from './axisMarks';

/** Where a mark's words stand. */
export interface AxisLabel extends AxisMark {
  readonly x: number;
  readonly anchor: 'middle' | 'end';
  /** Words that would touch those before them are left out; their tick stays. */
  readonly isShown: boolean;
}

/** A label this near to the edge would be cut, px. */
const HALF_LABEL_PX = 22;
const HALF_LETTER_PX = 3.2;
const GAP_PX = 6;

/** The words along an axis: none cut by its end, none over another. */
export function axisLabels(
  marks: readonly AxisMark[],
  widthPx: number,
  place: (at: number) => number,
): AxisLabel[] {
  let endsPx = -Infinity;
  return marks.map((mark) => {
    const x = place(mark.at);
    const half = HALF_LETTER_PX * mark.label.length;
    const anchor = x > widthPx - Math.max(HALF_LABEL_PX, half) ? 'end' : 'middle';
    const right = anchor === 'end' ? x : x + half;
    const isShown = right - 2 * half >= endsPx + GAP_PX;
    if (isShown) endsPx = right;
    return { ...mark, x, anchor, isShown };
  });
}
