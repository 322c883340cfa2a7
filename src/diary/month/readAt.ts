import { least } from 'd3-array';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { spokenTime } from '../../../shared/log/spokenTime';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/logPage';
import type { LogAnswer } from '../../ask/outcome';
import { hourByHour } from '../../charts/hourByHour';
import type { Dots } from './monthQuantities';

/** A dot is read from so far beside it, h. */
const BESIDE_H = 36;

/** The reading beside the cursor with its own time; the hour alone where there is none. */
export function dotAt(
  dots: Dots['dots'],
  startAt: string,
  written: (value: number) => string,
): (timeH: number) => string {
  const startH = hoursOf(startAt);
  return (timeH) => {
    const near = least(dots, (dot) => Math.abs(dot.timeH - timeH));
    return near && Math.abs(near.timeH - timeH) <= BESIDE_H
      ? say.stretch.at(spokenTime(localTimeOf(startH + near.timeH)), written(near.value))
      : spokenTime(localTimeOf(Math.round(startH + timeH)));
  };
}

/** "4 March, 10:00: 8.1 ± 0.2 dKH": the fitted tank and two standard errors; before it the test. */
export function fittedAt(
  { fit, fan }: LogAnswer,
  earlier: Dots['dots'],
): (timeH: number) => string {
  const dkh = hourByHour(fan.timesH, fan.dkh);
  const spread = hourByHour(fan.timesH, fan.spreadDkh).values;
  const tested = dotAt(earlier, fit.startAt, (value) => `${figure(value, 1)} dKH`);
  return (timeH) => {
    const row = Math.round(timeH - dkh.fromH);
    const value = dkh.values[row];
    if (value === undefined) return tested(timeH);
    return say.stretch.at(
      spokenTime(localTimeOf(Math.round(hoursOf(fit.startAt) + timeH))),
      `${figure(value, 1)} ± ${figure(2 * spread[row]!, 1)} dKH`,
    );
  };
}
