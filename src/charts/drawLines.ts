import { line } from 'd3-shape';
import { rowsIn, type Frame, type Scales, type Series } from './chartScales';
import { dayMean } from './dayMean';
import { decimate, type Point } from './decimate';
import type { TimeWindow } from './timeWindow';

/** Beyond this many hours a day is too narrow to read: its mean is drawn over a faint trace. */
const LONG_VIEW_H = 24 * 14;

/** Draws every trial's line on a canvas, in its ink and dash. */
export function drawLines(
  canvas: HTMLCanvasElement,
  series: readonly Series[],
  window: TimeWindow,
  frame: Frame,
  { x, y }: Scales,
): void {
  const context = canvas.getContext('2d');
  if (!context) return;
  const ratio = globalThis.devicePixelRatio || 1;
  canvas.width = Math.round(frame.width * ratio);
  canvas.height = Math.round(frame.height * ratio);
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  const plotWidth = frame.width - frame.left - frame.right;
  context.beginPath();
  context.rect(frame.left, 0, plotWidth, frame.height);
  context.clip();
  context.lineJoin = 'round';
  const styles = getComputedStyle(canvas);
  const path = line<Point>(
    ({ x }) => x,
    ({ y: value }) => y(value),
  ).context(context);
  const stroke = (values: Float64Array, dash: readonly number[], width: number, alpha: number) => {
    const [from, to] = rowsIn(window, values.length);
    context.beginPath();
    context.globalAlpha = alpha;
    context.lineWidth = width;
    context.setLineDash([...dash]);
    path(decimate((row) => x(row), values, from, to, Math.max(1, Math.round(plotWidth))));
    context.stroke();
  };
  const long = window.toH - window.fromH > LONG_VIEW_H;
  for (const { values, className, dash } of series) {
    context.strokeStyle = styles.getPropertyValue(`--${className}`);
    if (long) stroke(values, [], 1, 0.3);
    stroke(long ? dayMean(values) : values, dash, 2, 1);
  }
}
