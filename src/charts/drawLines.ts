import { line } from 'd3-shape';
import { rowsIn, type Frame, type Scales, type Series } from './chartScales';
import { decimate, type Point } from './decimate';
import type { TimeWindow } from './timeWindow';

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
  for (const { values, className, dash } of series) {
    const [from, to] = rowsIn(window, values.length);
    context.beginPath();
    context.strokeStyle = styles.getPropertyValue(`--${className}`);
    context.lineWidth = 1.75;
    context.setLineDash([...dash]);
    path(decimate((row) => x(row), values, from, to, Math.max(1, Math.round(plotWidth))));
    context.stroke();
  }
}
