import type { Scenario } from '../../../shared/scenario/schema';
import type { ColumnId } from '../../../shared/trace/columns';
import { readColumn, type Crossing, type Trace } from '../../../shared/trace/trace';
import { lineOf, type LineResult } from '../../../shared/verdict/lineResult';
import { ended } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';

/** What a tank runs by until a day, counted from the first. */
export interface Stretch {
  readonly scenario: Scenario;
  readonly untilDay: number;
}

/** A tank that went through all stretches, one after the other. */
export interface Replay {
  /** Alkalinity hour by hour. */
  readonly dkh: readonly number[];
  /** Each watched line with its worst of all stretches. */
  readonly lines: readonly LineResult[];
  readonly crossings: readonly Crossing[];
  readonly stoppedH: number | undefined;
  readonly peakPh: number;
  /** Any column hour by hour. */
  readonly hourly: (column: ColumnId) => readonly number[];
  /** Largest move of alkalinity within any twenty-four hours, the changes of plan included, dKH. */
  readonly largestMoveDkh: number;
}

const worse = (a: LineResult, b: LineResult): LineResult =>
  (a.trouble === 'above' ? b.worst > a.worst : b.worst < a.worst) ? b : a;

/** Runs them from a state on; where a tank has left its chemistry's range it ends there. */
export function replayed(
  stretches: readonly Stretch[],
  from: TankState,
  options: SimulationOptions,
): Replay {
  let state = from;
  const traces: Trace[] = [];
  const crossings: Crossing[] = [];
  let lines: readonly LineResult[] = [];
  let stoppedH: number | undefined;
  for (const { scenario, untilDay } of stretches) {
    const trial = ended({ ...scenario, days: untilDay }, options, state);
    const run = trial.result();
    traces.push(run.trace);
    crossings.push(...run.crossings);
    const before = lines;
    lines = run.lines.map((line, i) => (before[i] ? worse(before[i], line) : line));
    stoppedH = run.stopped?.timeH;
    if (stoppedH !== undefined) break;
    state = trial.state();
  }
  // The hour of a change belongs to both.
  const hourly = (column: ColumnId) =>
    traces.flatMap((trace, i) => [...readColumn(trace, column).subarray(i > 0 ? 1 : 0)]);
  return {
    ...{ dkh: hourly('alkalinity_dkh'), lines, crossings, stoppedH, hourly },
    peakPh: lineOf(lines, 'phHigh').worst,
    largestMoveDkh: lineOf(lines, 'alkalinityChange').worst,
  };
}

/** The widest range of any twenty-four hours between two hours, in the unit of the values. */
export function widestDay(hourly: ArrayLike<number>, fromH: number, toH: number): number {
  let widest = 0;
  for (let from = fromH; from + 24 <= Math.min(toH, hourly.length - 1); from++) {
    let [low, high] = [Infinity, -Infinity];
    for (let hour = from; hour <= from + 24; hour++) {
      low = Math.min(low, hourly[hour]!);
      high = Math.max(high, hourly[hour]!);
    }
    widest = Math.max(widest, high - low);
  }
  return widest;
}
