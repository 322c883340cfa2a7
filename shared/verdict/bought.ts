import type { ActId } from '../faults/firstHour';
import type { Line } from './lines';

/** Acts whose worth is reckoned: those of the first hour that the engine knows how to do. */
export type BoughtActId = ActId | 'batteryAir' | 'scoop' | 'carbonatedWater' | 'putRight';

/** When a line is passed, h from when the first thing broke, over the tanks that this may be. */
export interface Reach {
  /** In the tank that passes it soonest; undefined when none does. */
  readonly soonestH: number | undefined;
  /** In the tank as it is set; undefined when it does not. */
  readonly asSetH: number | undefined;
  /** In the tank that passes it latest; undefined when one keeps it. */
  readonly latestH: number | undefined;
}

/**
 * What an act does to the first line that it moves: passes it later, keeps it, goes less far
 * beyond it, is outside it for less long, or none of these.
 */
export type Gain = 'later' | 'kept' | 'lower' | 'shorter' | 'nothing';

/** What one act buys, worked out by two runs that differ in nothing else. */
export interface ActBought {
  readonly act: BoughtActId;
  readonly gain: Gain;
  /** The line that it is measured by. */
  readonly line: Line;
  readonly before: Reach;
  readonly after: Reach;
  /** Minutes gained in the tank as it is set; undefined when the line is not passed any more. */
  readonly gainedMin: number | undefined;
  /** The farthest beyond the line, without and with it. */
  readonly worst: readonly [without: number, withIt: number];
  /** Hours beyond the line, without and with it. */
  readonly outsideH: readonly [without: number, withIt: number];
  /** A line that it brings sooner although it helps another, h from when the first thing broke. */
  readonly costs:
    | { readonly line: Line; readonly withoutH: number | undefined; readonly withItH: number }
    | undefined;
  /** Carbonated water: so many portions of so many litres. */
  readonly portions: { readonly count: number; readonly litresEach: number } | undefined;
}

/** A failure's first hour in numbers. */
export interface FirstHourBought {
  /** The line that is passed first if nothing is done; undefined when none is within the drill. */
  readonly first: { readonly line: Line; readonly reach: Reach } | undefined;
  /** When the acts begin, h from when the first thing broke. */
  readonly actsFromH: number;
  /** How long it was followed, h from when the first thing broke. */
  readonly followedH: number;
  readonly acts: readonly ActBought[];
  /** Acts that would make it worse, and are not offered. */
  readonly withheld: readonly BoughtActId[];
}
