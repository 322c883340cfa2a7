import { figure } from '../../shared/words/figure';
import { say } from '../../shared/words/card';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { rowADay } from '../charts/byDay';
import { dayMean } from '../charts/dayMean';
import { dayRange } from '../charts/dayRange';

export const CURVE = { width: 320, height: 96, left: 24, right: 6, top: 6, bottom: 16 } as const;

interface Curve {
  /** The mean of each day. */
  readonly path: string;
  /** What a day swings by. */
  readonly swing: string;
  readonly y: (dkh: number) => number;
  readonly days: readonly { readonly x: number; readonly label: string }[];
}

const WEEK_H = 168;

/** The plan's alkalinity from the target on, hourly in dKH, day by day as a picture over the keeper's band. */
export function cardCurve(dkh: Float64Array, targetDkh: number, low: number, high: number): Curve {
  const { width, height, left, right, top, bottom } = CURVE;
  const mean = dayMean(dkh);
  const days = rowADay(0, dkh.length - 1);
  const ends = [low, high, ...dkh];
  const x = scaleLinear([0, dkh.length - 1], [left, width - right]);
  const y = scaleLinear([Math.min(...ends) - 0.2, Math.max(...ends) + 0.2], [height - bottom, top]);
  const weeks = Math.floor((dkh.length - 1) / WEEK_H);
  return {
    path:
      line<number>(
        (row) => x(row),
        (row) => y(mean[row]!),
      )(days) ?? '',
    swing:
      area<number>(
        (row) => x(row),
        (row) => y(dayRange(dkh, row)[0]),
        (row) => y(dayRange(dkh, row)[1]),
      )(days) ?? '',
    y,
    days: Array.from({ length: weeks + 1 }, (_, week) => ({
      x: x(week * WEEK_H),
      label: week === 0 ? say.begin(figure(targetDkh)) : say.day(week * 7),
    })),
  };
}
