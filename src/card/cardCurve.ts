import { figure } from '../../shared/words/figure';
import { say } from '../../shared/words/card';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';

export const CURVE = { width: 320, height: 96, left: 24, right: 6, top: 6, bottom: 16 } as const;

interface Curve {
  readonly path: string;
  readonly y: (dkh: number) => number;
  readonly days: readonly { readonly x: number; readonly label: string }[];
}

/** A dot every few hours is as fine as paper shows. */
const EVERY_H = 3;
const WEEK_H = 168;

/** The plan's alkalinity from the target on, hourly in dKH, as a picture over the keeper's band. */
export function cardCurve(dkh: Float64Array, targetDkh: number, low: number, high: number): Curve {
  const { width, height, left, right, top, bottom } = CURVE;
  const points = Array.from(dkh, (value, hour) => ({ value, hour })).filter(
    ({ hour }) => hour % EVERY_H === 0,
  );
  const ends = [low, high, ...dkh];
  const x = scaleLinear([0, dkh.length - 1], [left, width - right]);
  const y = scaleLinear([Math.min(...ends) - 0.2, Math.max(...ends) + 0.2], [height - bottom, top]);
  const weeks = Math.floor((dkh.length - 1) / WEEK_H);
  return {
    path:
      line<(typeof points)[number]>(
        ({ hour }) => x(hour),
        ({ value }) => y(value),
      )(points) ?? '',
    y,
    days: Array.from({ length: weeks + 1 }, (_, week) => ({
      x: x(week * WEEK_H),
      label: week === 0 ? say.begin(figure(targetDkh)) : say.day(week * 7),
    })),
  };
}
