import { momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import type { Line } from './lines';
import type { Outcome } from './outcome';

/** How one line fared from the moment at which the first thing broke. */
export interface LineResult extends Line {
  /** First moment beyond it, h of the trial; undefined when it was kept. */
  readonly firstH: number | undefined;
  /** Whether it was passed before anything broke. */
  readonly already: boolean;
  readonly worst: number;
  readonly worstH: number;
  readonly outsideH: number;
  /** When it was back for good; undefined when it was not, or never left. */
  readonly backH: number | undefined;
}

/** A pipe that opened or closed. */
export interface Switching {
  readonly timeH: number;
  readonly pipe: string;
  readonly opens: boolean;
  /** Closed because its vessel had nothing left. */
  readonly dry: boolean;
}

export interface DrillOutcome extends Outcome {
  readonly lines: readonly LineResult[];
  readonly switchings: readonly Switching[];
}

/** When the first thing breaks, h of the trial. */
export const firstFaultH = ({ faults, start }: Scenario): number =>
  Math.max(0, Math.min(...faults.map((fault) => momentH(fault, start.clockHour))));
