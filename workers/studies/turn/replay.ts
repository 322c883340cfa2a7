import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn, type Crossing } from '../../../shared/trace/trace';
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
  const dkh: number[] = [];
  const crossings: Crossing[] = [];
  let lines: readonly LineResult[] = [];
  let stoppedH: number | undefined;
  for (const { scenario, untilDay } of stretches) {
    const trial = ended({ ...scenario, days: untilDay }, options, state);
    const run = trial.result();
    // The hour of the change belongs to both.
    dkh.push(...readColumn(run.trace, 'alkalinity_dkh').subarray(dkh.length > 0 ? 1 : 0));
    crossings.push(...run.crossings);
    const before = lines;
    lines = run.lines.map((line, i) => (before[i] ? worse(before[i], line) : line));
    stoppedH = run.stopped?.timeH;
    if (stoppedH !== undefined) break;
    state = trial.state();
  }
  return {
    ...{ dkh, lines, crossings, stoppedH },
    peakPh: lineOf(lines, 'phHigh').worst,
    largestMoveDkh: lineOf(lines, 'alkalinityChange').worst,
  };
}

/** The widest range of any twenty-four hours between two hours, dKH. */
export function widestDayDkh(dkh: ArrayLike<number>, fromH: number, toH: number): number {
  let widest = 0;
  for (let from = fromH; from + 24 <= Math.min(toH, dkh.length - 1); from++) {
    let [low, high] = [Infinity, -Infinity];
    for (let hour = from; hour <= from + 24; hour++) {
      low = Math.min(low, dkh[hour]!);
      high = Math.max(high, dkh[hour]!);
    }
    widest = Math.max(widest, high - low);
  }
  return widest;
}
