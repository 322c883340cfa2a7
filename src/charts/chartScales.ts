import { extent } from 'd3-array';
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import type { TimeWindow } from './timeWindow';

export interface Series {
  readonly key: string;
  readonly label: string;
  readonly className: string;
  readonly dash: readonly number[];
  readonly values: Float64Array;
}

/** A picture and the room about its plot, px. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const rowsIn = ({ fromH, toH }: TimeWindow, rows: number): [number, number] => [
  Math.max(0, Math.floor(fromH)),
  Math.min(rows - 1, Math.ceil(toH)),
];

/** A band edge this near to the data (in parts of their span) is worth showing. */
const NEAR = 0.6;

function valueDomain(
  series: readonly Series[],
  window: TimeWindow,
  least: number,
  band: readonly [number, number] | undefined,
  edges: readonly ArrayLike<number>[],
): [number, number] {
  const ends = [...series.map(({ values }) => values), ...edges].flatMap((values) => {
    const [from, to] = rowsIn(window, values.length);
    const shown: ArrayLike<number> & Iterable<number> =
      values instanceof Float64Array
        ? values.subarray(from, to + 1)
        : Array.from(values).slice(from, to + 1);
    return extent(shown) as [number, number];
  });
  const [low = 0, high = 1] = extent(ends);
  const short = Math.max(0, least - (high - low)) / 2;
  const [a, b] = [low - short, high + short];
  const reach = (b - a) * NEAR;
  const near = (band ?? []).filter((edge) => edge > a - reach && edge < b + reach);
  return [Math.min(a, ...near), Math.max(b, ...near)];
}

export interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

export function scalesFor(
  series: readonly Series[],
  window: TimeWindow,
  frame: Frame,
  least: number,
  band: readonly [number, number] | undefined,
  /** Further curves that are to be inside the frame. */
  edges: readonly ArrayLike<number>[] = [],
): Scales {
  const [low, high] = valueDomain(series, window, least, band, edges);
  const pad = (high - low) * 0.06 || 1;
  return {
    x: scaleLinear([window.fromH, window.toH], [frame.left, frame.width - frame.right]),
    y: scaleLinear([low - pad, high + pad], [frame.height - frame.bottom, frame.top]),
  };
}
