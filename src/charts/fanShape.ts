import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { isLongView, rowADay } from './byDay';
import type { Frame, Scales } from './chartScales';
import { dayMean } from './dayMean';
import { dayRange } from './dayRange';
import { hourByHour } from './hourByHour';

/** Something that happened: poured in, water changed, what runs or is kept changed, or what was noted. */
export interface Mark {
  /** Hours since the start of the log. */
  readonly timeH: number;
  readonly kind: 'poured' | 'water' | 'change' | 'note';
  readonly text: string;
}

/** A forecast with its readings, as a chart needs it; hours since the start of the log. */
export interface FanPicture {
  readonly timesH: readonly number[];
  readonly dkh: readonly number[];
  readonly spreadDkh: readonly number[];
  readonly points: readonly {
    readonly timeH: number;
    readonly value: number;
    readonly sigma: number;
    readonly outlier: boolean;
  }[];
  readonly band: readonly [number, number];
  readonly fromH: number;
  readonly toH: number;
}

interface FanShape extends Scales {
  readonly middle: string;
  /** What a day swings by, over a week or more; else none. */
  readonly swing: string;
  readonly wash: string;
}

/**
 * The paths of a fan in a frame: the middle line, and two standard errors to either side. Over a week or
 * more the line is the mean of each day, and the sides are its lowest and its highest hour's.
 */
export function fanShape(picture: FanPicture, frame: Frame): FanShape {
  const { timesH, dkh, spreadDkh, points, band, fromH, toH } = picture;
  const course = hourByHour(timesH, dkh);
  const spread = hourByHour(timesH, spreadDkh).values;
  const rows = Array.from(course.values, (value, k) => ({
    ...{ timeH: course.fromH + k, dkh: value, by: 2 * spread[k]! },
  })).filter(({ timeH }) => timeH >= fromH && timeH <= toH);
  const ends = [
    ...rows.flatMap((row) => [row.dkh - row.by, row.dkh + row.by]),
    ...points.flatMap(({ value, sigma }) => [value - sigma, value + sigma]),
  ];
  const [low = band[0], high = band[1]] = extent(ends);
  const near = band.filter((edge) => edge > low - 1 && edge < high + 1);
  const x = scaleLinear([fromH, toH], [frame.left, frame.width - frame.right]);
  const y = scaleLinear(
    [Math.max(0, Math.min(low, ...near) - 0.1), Math.min(30, Math.max(high, ...near) + 0.1)],
    [frame.height - frame.bottom, frame.top],
  );
  const long = isLongView(picture);
  const days = long && rows.length > 0 ? rowADay(0, rows.length - 1) : [...rows.keys()];
  const of = (value: (row: (typeof rows)[number]) => number) => Float64Array.from(rows, value);
  const middle = of((row) => row.dkh);
  const mean = long ? dayMean(middle) : middle;
  const around = (values: Float64Array, row: number) =>
    long ? dayRange(values, row) : ([values[row]!, values[row]!] as const);
  const between = (low: Float64Array, high: Float64Array) =>
    area<number>(
      (row) => x(rows[row]!.timeH),
      (row) => y(around(low, row)[0]),
      (row) => y(around(high, row)[1]),
    )(days) ?? '';
  return {
    x,
    y,
    middle:
      line<number>(
        (row) => x(rows[row]!.timeH),
        (row) => y(mean[row]!),
      )([...rows.keys()]) ?? '',
    swing: long ? between(middle, middle) : '',
    wash: between(
      of((row) => row.dkh - row.by),
      of((row) => row.dkh + row.by),
    ),
  };
}
