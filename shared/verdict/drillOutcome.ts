import { momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import type { LedgerRole } from '../trace/trace';
import type { LineResult } from './lineResult';
import type { Outcome } from './outcome';

/** A pipe that opened or closed. */
export interface Switching {
  readonly timeH: number;
  readonly pipe: string;
  /** What its ledger row counts as. */
  readonly role: LedgerRole;
  readonly opens: boolean;
  /** Closed because its vessel had nothing left. */
  readonly dry: boolean;
}

export interface DrillOutcome extends Outcome {
  readonly switchings: readonly Switching[];
}

/** How the same failure goes otherwise: its lines, and when the reservoir was empty. */
export interface OtherEnd {
  readonly lines: readonly LineResult[];
  readonly emptyH: number | undefined;
}

/** A drill with the ends of what may be: the failure as it is set leads, without chalk. */
export interface DrillAnswer {
  readonly outcome: DrillOutcome;
  /** The lines of the same plan with nothing failing, from the same moment on. */
  readonly undisturbed: readonly LineResult[];
  /** With chalk falling at once; undefined when none would fall. */
  readonly chalk: OtherEnd | undefined;
  /** A power cut with no gas exchange left and more breathed; undefined in other failures. */
  readonly closed: OtherEnd | undefined;
  /** A power cut with the gas exchange that is set and less breathed; undefined in others. */
  readonly eased: OtherEnd | undefined;
  /** With nobody noticing until the end; undefined when nothing was to be noticed. */
  readonly leftAlone: OtherEnd | undefined;
  /** The hour of the day at which the same failure drives pH highest; undefined when it is this one. */
  readonly worst: { readonly clockHour: number; readonly peakPh: number } | undefined;
  /** The hour of the day at which it takes oxygen below the keeper's line soonest, h after it began. */
  readonly soonest: { readonly clockHour: number; readonly afterH: number } | undefined;
}

/** When the first thing breaks, h of the trial. */
export const firstFaultH = ({ faults, start }: Scenario): number =>
  Math.max(0, Math.min(...faults.map((fault) => momentH(fault, start.clockHour))));

/** When the top-off reservoir had nothing left, from a moment on. */
export const emptyFrom = (
  { switchings }: Pick<DrillOutcome, 'switchings'>,
  fromH: number,
): number | undefined =>
  switchings.find(({ role, dry, timeH }) => role === 'topOff' && dry && timeH >= fromH)?.timeH;
