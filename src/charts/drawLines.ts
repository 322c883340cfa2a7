import { area, line } from 'd3-shape';
import { isLongView, rowADay } from './byDay';
import { rowsIn, type Frame, type Scales, type Series } from './chartScales';
import { dayMean } from './dayMean';
import { dayRange } from './dayRange';
import { decimate, type Point } from './decimate';
import type { TimeWindow } from './timeWindow';

const RIBBON_ALPHA = 0.22;
/** Outside the keeper's band a line is thicker, on the warning ink. */
const WARNING_PX = 6;

/** Draws every trial's line on a canvas, in its ink and dash; what is outside the band stands out. */
export function drawLines(
  canvas: HTMLCanvasElement,
  series: readonly Series[],
  window: TimeWindow,
  frame: Frame,
  { x, y }: Scales,
  band?: readonly [number, number],
): void {
  const context = canvas.getContext('2d');
  if (!context) return;
  const ratio = globalThis.devicePixelRatio || 1;
  canvas.width = Math.round(frame.width * ratio);
  canvas.height = Math.round(frame.height * ratio);
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.lineJoin = 'round';
  const { left, top, width, height } = frame;
  const plotWidth = width - left - frame.right;
  const styles = getComputedStyle(canvas);
  const ink = (name: string) => styles.getPropertyValue(`--${name}`);
  const path = line<Point>(
    (point) => point.x,
    (point) => y(point.y),
  ).context(context);
  const ribbon = area<{ x: number; range: [number, number] }>(
    (day) => day.x,
    (day) => y(day.range[0]),
    (day) => y(day.range[1]),
  ).context(context);

  const inside = (fromY: number, toY: number, draw: () => void) => {
    context.save();
    context.beginPath();
    context.rect(left, fromY, plotWidth, Math.max(0, toY - fromY));
    context.clip();
    draw();
    context.restore();
  };
  const stroke = (values: Float64Array, dash: readonly number[], px: number) => {
    const [from, to] = rowsIn(window, values.length);
    context.beginPath();
    context.lineWidth = px;
    context.setLineDash([...dash]);
    path(decimate((row) => x(row), values, from, to, Math.max(1, Math.round(plotWidth))));
    context.stroke();
  };
  const fill = (values: Float64Array) => {
    const [from, to] = rowsIn(window, values.length);
    context.beginPath();
    context.globalAlpha = RIBBON_ALPHA;
    ribbon(rowADay(from, to).map((row) => ({ x: x(row), range: dayRange(values, row) })));
    context.fill();
    context.globalAlpha = 1;
  };

  const long = isLongView(window);
  for (const { values, className, dash } of series) {
    const shown = long ? dayMean(values) : values;
    context.fillStyle = ink(className);
    if (long) inside(0, height, () => fill(values));
    if (band) {
      context.strokeStyle = ink('alarm');
      const warn = () => stroke(shown, [], WARNING_PX);
      inside(top, y(band[1]), warn);
      inside(y(band[0]), height, warn);
    }
    context.strokeStyle = ink(className);
    inside(0, height, () => stroke(shown, dash, 2));
  }
}
