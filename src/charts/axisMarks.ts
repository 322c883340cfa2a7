import { scaleLinear } from 'd3-scale';
import { localTimeOf } from '../../shared/log/localTime';
import { spokenDay } from '../../shared/log/spokenTime';
import { say } from '../../shared/words/charts';
import type { TimeWindow } from './timeWindow';

/** A place along an axis, and what stands there. */
export interface AxisMark {
  readonly at: number;
  readonly label: string;
}

const DAY_H = 24;
/** A date needs so much room, px. */
const DATE_PX = 110;

/** An hour of the clock needs so much, and so much of a chart is beside its lines, px. */
const CLOCK_PX = 48;
const MARGINS_PX = 110;
const CLOCK_STEPS_H = [3, 6, 12, DAY_H];
/** A view so short has hours of the clock. */
const BY_CLOCK_H = 84;

/** Hours of the clock, which reads `clockHour` at 0, and what a midnight is called. */
function clockMarks(
  { fromH, toH }: TimeWindow,
  width: number,
  clockHour: number,
  called: (midnight: number) => string,
): AxisMark[] {
  const room = (width - MARGINS_PX) / CLOCK_PX;
  const step = CLOCK_STEPS_H.find((hours) => (toH - fromH) / hours <= room) ?? DAY_H;
  const first = Math.ceil((fromH + clockHour) / step) * step;
  const count = Math.floor((toH + clockHour - first) / step) + 1;
  return Array.from({ length: count }, (_, i) => {
    const clock = first + i * step;
    return {
      at: clock - clockHour,
      label: clock % 24 === 0 ? called(clock) : `${String(clock % 24).padStart(2, '0')}:00`,
    };
  });
}

/** Dates at their midnights, no more than there is room for; the window counts hours from `startH`, hours since 1970. */
export function dateMarks({ fromH, toH }: TimeWindow, width: number, startH = 0): AxisMark[] {
  if (toH - fromH <= BY_CLOCK_H)
    return clockMarks({ fromH, toH }, width, startH, (clock) => spokenDay(localTimeOf(clock)));
  const room = Math.max(2, Math.min(7, width / DATE_PX));
  const every = Math.max(1, Math.ceil((toH - fromH) / DAY_H / room));
  const first = Math.ceil((startH + fromH) / DAY_H);
  const last = Math.floor((startH + toH) / DAY_H);
  return Array.from({ length: Math.floor((last - first) / every) + 1 }, (_, i) => {
    const hours = (first + i * every) * DAY_H;
    return { at: hours - startH, label: spokenDay(localTimeOf(hours)) };
  });
}

/** Marks on the time axis: whole days, or clock hours when the view is short. */
export function timeMarks(
  { fromH, toH }: TimeWindow,
  width: number,
  /** Undefined where hours are counted from something that happened. */
  clockHour: number | undefined,
): AxisMark[] {
  if (clockHour === undefined) {
    return scaleLinear([fromH, toH], [0, 1])
      .ticks(Math.max(2, Math.min(8, width / 95)))
      .map((at) => ({ at, label: `${at} h` }));
  }
  if (toH - fromH <= BY_CLOCK_H)
    return clockMarks({ fromH, toH }, width, clockHour, (clock) => say.day(String(clock / 24 + 1)));
  // Where a day of the calendar begins, as the cursor says it.
  return scaleLinear([fromH / 24 + 1, toH / 24 + 1], [0, 1])
    .ticks(Math.max(2, Math.min(8, width / 95)))
    .filter((day) => Number.isInteger(day))
    .map((day) => ({ at: (day - 1) * 24 - clockHour, day }))
    .filter(({ at }) => at >= fromH && at <= toH)
    .map(({ at, day }) => ({ at, label: at === 0 ? say.start : say.day(String(day)) }));
}
