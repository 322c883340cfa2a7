import type { Scenario } from '../../../shared/scenario/schema';
import type { WorstDump } from '../drill/worstDump';
import type { Apart } from './apart';
import type { First } from './gettingThere';
import type { Promised, Refusal } from './promised';
import type { Lever } from './lever';
import type { Stretch } from './replay';

/** A dose that is set anew: mL a day. */
export interface TurnedPump {
  readonly name: string;
  readonly fromMlPerDay: number;
  readonly toMlPerDay: number;
}

/** The change that was found, replayed; its numbers are those of the lever: mL a day, g/L, L an hour, or g each time. */
export interface Turned extends Promised {
  readonly lever: Lever['kind'];
  readonly from: number;
  readonly to: number;
  /** Where it would have to stand at either end of what is thought of the use. */
  readonly low: number;
  readonly high: number;
  /** Where it is poured in by hand: what, and how often. */
  readonly dose: Lever['dose'];
  readonly insteadOf: Lever['insteadOf'];
  /** Every pump that is set anew: both parts of a pair. */
  readonly pumps: readonly TurnedPump[];
  /** The other part of a pair that is left as it is; undefined where it is turned along, or there is none. */
  readonly apart: Apart | undefined;
  readonly first: First;
  readonly levelDkh: number;
  readonly targetDkh: number;
  /** Days until the water stands at the target, and between what it then is; undefined when it never does. */
  readonly settled:
    { readonly days: number; readonly lowDkh: number; readonly highDkh: number } | undefined;
  readonly largestDailyDkh: number;
  /** May be moved in a day, dKH: the keeper's limit, or the day's own swing where that is more. */
  readonly allowedDkh: number;
  readonly peakPh: number;
  /** The tank as it stands, with what holds it. */
  readonly held: Scenario;
  /** Fresh water that the top-off then brings, L a day. */
  readonly toppedOffLPerDay: number;
  readonly worstDump: WorstDump | undefined;
  /** So much may stand in the reservoir, L, where all of it at once does harm; undefined where it does none. */
  readonly fullestL: number | undefined;
  /** Where it is one more channel: why nothing that runs is turned instead. */
  readonly whyNotOwn: Refusal | undefined;
  /** Alkalinity hour by hour, dKH. */
  readonly dkh: readonly number[];
  /** The tank as it stands, with what it runs by from now on and what is poured. */
  readonly scenario: Scenario;
  /** The keeper's plan with what is turned now, and with what holds once it has settled. */
  readonly plan: Scenario;
  readonly heldPlan: Scenario;
  /** What is done day by day, as it was replayed. */
  readonly stretches: readonly Stretch[];
}

/** One change that would make a turn of it. */
export type NearestTurn =
  | { readonly kind: 'knownUse'; readonly giveOrTakeDkhPerDay: number }
  | { readonly kind: 'target'; readonly dkh: number }
  /** Calcium runs out as the tank runs, with the turn or without: alkalinity alone holds nothing. */
  | { readonly kind: 'calcium' }
  /** The day's own swing is above the limit. */
  | { readonly kind: 'limit'; readonly dkhPerDay: number };

export type Turn =
  /** Today's plan brings no alkalinity: there is nothing to turn. */
  | { readonly kind: 'nothingRuns' }
  | { readonly kind: 'turn'; readonly turned: Turned }
  | {
      readonly kind: 'refused';
      readonly refusal: Refusal;
      readonly nearest: NearestTurn | undefined;
    };
