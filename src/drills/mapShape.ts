import { fixed, toDecimals } from '../../shared/units/digits';
import { contours } from 'd3-contour';
import { scaleLinear } from 'd3-scale';
import type { DumpMapResult } from './levers';

const MARGIN = { left: 40, right: 34, top: 18, bottom: 38 };
/** Contours every tenth of a pH, as far as the constants reach. */
const LEVELS = Array.from({ length: 14 }, (_, i) => 8.2 + i * 0.1).map((ph) => toDecimals(ph, 1));

/** The value between four cells, by two straight lines. */
function between(values: readonly (readonly number[])[], column: number, row: number): number {
  const clamp = (at: number, most: number) => Math.max(0, Math.min(most, at));
  const c = clamp(column, values[0]!.length - 1);
  const r = clamp(row, values.length - 1);
  const [c0, r0] = [Math.floor(c), Math.floor(r)];
  const [c1, r1] = [Math.min(c0 + 1, values[0]!.length - 1), Math.min(r0 + 1, values.length - 1)];
  const along = (line: readonly number[]) => line[c0]! + (c - c0) * (line[c1]! - line[c0]!);
  return along(values[r0]!) + (r - r0) * (along(values[r1]!) - along(values[r0]!));
}

/** Where a value falls among others that rise, as a broken index. */
function indexOf(values: readonly number[], value: number): number {
  const next = values.findIndex((one) => one >= value);
  if (next < 0) return values.length - 1;
  if (next === 0) return 0;
  return next - 1 + (value - values[next - 1]!) / (values[next]! - values[next - 1]!);
}

/** Where a rising row of values passes a level, as a broken index. */
const crossing = (values: readonly number[], level: number): number | undefined =>
  values[0]! < level && values.at(-1)! > level ? indexOf(values, level) : undefined;

/** The map as paths: contours of pH over reservoir (across) and strength (up). */
export function mapShape(map: DumpMapResult, width: number, height: number) {
  const { reservoirsL, strengthsGPerL, ph, scenario } = map;
  const [columns, rows] = [reservoirsL.length, strengthsGPerL.length];
  const x = scaleLinear(
    [reservoirsL[0]!, reservoirsL.at(-1)!],
    [MARGIN.left, width - MARGIN.right],
  );
  const y = scaleLinear(
    [strengthsGPerL[0]!, strengthsGPerL.at(-1)!],
    [height - MARGIN.bottom, MARGIN.top],
  );
  // A contour's coordinates count cells from their corners; the values sit in their middles.
  const reservoirAt = scaleLinear(
    reservoirsL.map((_, i) => i + 0.5),
    reservoirsL,
  ).clamp(true);
  const strengthAt = scaleLinear(
    strengthsGPerL.map((_, i) => i + 0.5),
    strengthsGPerL,
  ).clamp(true);
  const limits = [scenario.limits.phHighNbs, scenario.limits.phHarmNbs];
  const levels = [...new Set([...LEVELS, ...limits])].sort((a, b) => a - b);
  const found = contours().size([columns, rows]).thresholds(levels)(ph.flat());
  const ring = (points: number[][]) =>
    `M${points.map(([c, r]) => `${fixed(x(reservoirAt(c!)), 1)},${fixed(y(strengthAt(r!)), 1)}`).join('L')}Z`;
  return {
    ...{ x, y, left: MARGIN.left },
    contours: found
      .filter(({ coordinates }) => coordinates.length > 0)
      .map(({ value, coordinates }) => ({
        ph: value,
        isLimit: limits.includes(value),
        d: coordinates.flatMap((polygon) => polygon.map(ring)).join(''),
      })),
    labels: levels.flatMap((level) => {
      const top = crossing(ph.at(-1)!, level);
      if (top !== undefined) {
        return [{ ph: level, x: x(reservoirAt(top + 0.5)), y: MARGIN.top - 4 }];
      }
      const side = crossing(
        ph.map((row) => row.at(-1)!),
        level,
      );
      return side === undefined
        ? []
        : [{ ph: level, x: width - 2, y: y(strengthAt(side + 0.5)) + 4 }];
    }),
    xTicks: x.ticks(6).map((value) => ({ x: x(value), text: String(value) })),
    yTicks: y.ticks(5).map((value) => ({ y: y(value), text: String(value) })),
    nearestPh: (litres: number, gramsPerL: number) =>
      between(ph, indexOf(reservoirsL, litres), indexOf(strengthsGPerL, gramsPerL)),
  };
}
