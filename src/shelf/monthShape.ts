import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { hoursOf } from '../../shared/log/localTime';
import type { Frame, Scales } from '../charts/chartScales';
import { dayMean } from '../charts/dayMean';
import { hourByHour } from '../charts/hourByHour';
import { spreadLabels } from '../charts/endLabels';
import type { TimeWindow } from '../charts/timeWindow';
import { inks, type Ink } from '../store/inks';
import type { Glance } from './glance';

/** So far back and ahead of now, h. */
const BACK_H = 16 * 24;
const AHEAD_H = 14 * 24;
/** Every so many hours a point, of the mean of its day: a day's swing is no matter of a month. */
const EVERY_H = 6;
const GAP = 13;
const PENCIL: Ink = { className: 'pencil', dash: [] };

/** One tank's line, and where its name stands. */
interface TankLine {
  readonly key: string;
  readonly name: string;
  readonly path: string;
  readonly ink: Ink;
  /** Of the name, moved apart from others. */
  readonly y: number;
}

/** All tanks over one month of the calendar, as a picture; x in hours since 1970. */
export interface MonthShape extends Scales, TimeWindow {
  readonly lines: readonly TankLine[];
}

/** The lines of all tanks that have one, around a moment in hours since 1970. */
export function monthShape(glances: readonly Glance[], nowH: number, frame: Frame): MonthShape {
  const [fromH, toH] = [nowH - BACK_H, nowH + AHEAD_H];
  const courses = glances.flatMap(({ tank, answer }) => {
    if (typeof answer !== 'object') return [];
    const startH = hoursOf(answer.fit.startAt);
    const course = hourByHour(answer.fan.timesH, answer.fan.dkh);
    const points = Array.from(dayMean(course.values), (dkh, i): [number, number] => [
      startH + course.fromH + i,
      dkh,
    ]).filter(([timeH], i) => i % EVERY_H === 0 && timeH >= fromH && timeH <= toH);
    return points.length > 1 ? [{ tank, points }] : [];
  });
  const [low = 7, high = 9] = extent(courses.flatMap(({ points }) => points.map(([, dkh]) => dkh)));
  const x = scaleLinear([fromH, toH], [frame.left, frame.width - frame.right]);
  const y = scaleLinear([low - 0.2, high + 0.2], [frame.height - frame.bottom, frame.top]);
  const draw = line<[number, number]>(
    ([timeH]) => x(timeH),
    ([, dkh]) => y(dkh),
  );
  // No colour twice: more tanks than inks are all in pencil, and told apart by their names.
  const inkOf = (i: number) => (courses.length > inks.length ? PENCIL : inks[i]!);
  const lines = courses.map(({ tank: { id, name }, points }, i) => ({
    ...{ key: id, name, ink: inkOf(i), path: draw(points) ?? '', y: y(points.at(-1)![1]) },
  }));
  return {
    x,
    y,
    fromH,
    toH,
    lines: spreadLabels(lines, GAP, frame.top, frame.height - frame.bottom),
  };
}
