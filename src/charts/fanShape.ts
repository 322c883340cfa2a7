import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Frame, Scales } from './chartScales';

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
  readonly wash: string;
}

/** The paths of a fan in a frame: the middle line, and two standard errors to either side. */
export function fanShape(picture: FanPicture, frame: Frame): FanShape {
  const { timesH, dkh, spreadDkh, points, band, fromH, toH } = picture;
  const rows = timesH.flatMap((timeH, k) =>
    timeH >= fromH && timeH <= toH ? [{ timeH, dkh: dkh[k]!, by: 2 * spreadDkh[k]! }] : [],
  );
  const ends = [
    ...rows.flatMap((row) => [row.dkh - row.by, row.dkh + row.by]),
    ...points.flatMap(({ value, sigma }) => [value - sigma, value + sigma]),
  ];
  const [low = 0, high = 1] = extent(ends);
  const near = band.filter((edge) => edge > low - 1 && edge < high + 1);
  const x = scaleLinear([fromH, toH], [frame.left, frame.width - frame.right]);
  const y = scaleLinear(
    [Math.max(0, Math.min(low, ...near) - 0.1), Math.min(30, Math.max(high, ...near) + 0.1)],
    [frame.height - frame.bottom, frame.top],
  );
  type Row = (typeof rows)[number];
  return {
    x,
    y,
    middle:
      line<Row>(
        ({ timeH }) => x(timeH),
        (row) => y(row.dkh),
      )(rows) ?? '',
    wash:
      area<Row>(
        ({ timeH }) => x(timeH),
        (row) => y(row.dkh - row.by),
        (row) => y(row.dkh + row.by),
      )(rows) ?? '',
  };
}
