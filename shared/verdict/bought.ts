import type { ActId } from '../faults/firstHour';
import type { Scenario } from '../scenario/schema';
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

/** What one thing buys, worked out by two runs that differ in nothing else. */
export interface Bought<Id extends string> {
  readonly act: Id;
  readonly gain: Gain;
  /** The line that it is measured by. */
  readonly line: Line;
  readonly before: Reach;
  readonly after: Reach;
  /**
   * Hours gained, each tank against itself, in the one that gains least and the one that gains most of
   * those that pass the line without it; Infinity: not passed any more.
   */
  readonly gainedH: readonly [least: number, most: number];
  /** The farthest beyond the line in the tank as it is set, without and with it. */
  readonly worst: readonly [without: number, withIt: number];
  /** The same in the tank that goes farthest, of all that this may be. */
  readonly farthest: readonly [without: number, withIt: number];
  /** Whether it gains in the tank as it is set, and not in another that this may be alone. */
  readonly gainsAsSet: boolean;
  /** Hours beyond the line in the tank that gains, without and with it. */
  readonly outsideH: readonly [without: number, withIt: number];
  /** A line that it brings sooner although it helps another, h from when the first thing broke. */
  readonly costs:
    | { readonly line: Line; readonly withoutH: number | undefined; readonly withItH: number }
    | undefined;
}

export interface ActBought extends Bought<BoughtActId> {
  /** Carbonated water: so many portions of so many litres. */
  readonly portions: { readonly count: number; readonly litresEach: number } | undefined;
}

/** What is passed first, and what matters more and is passed after it. */
export interface FirstPassed {
  readonly line: Line;
  readonly reach: Reach;
  readonly graver: { readonly line: Line; readonly reach: Reach } | undefined;
}

/** A failure's first hour in numbers. */
export interface FirstHourBought {
  /** The line that is passed first if nothing is done; undefined when none is within the drill. */
  readonly first: FirstPassed | undefined;
  /** When the acts begin, h from when the first thing broke. */
  readonly actsFromH: number;
  /** How long it was followed, h from when the first thing broke. */
  readonly followedH: number;
  readonly acts: readonly ActBought[];
  /** Acts that would make it worse, and are not offered. */
  readonly withheld: readonly BoughtActId[];
}

/** What a keeper can have in place before anything breaks. */
export const protectionIds = [
  'secondSwitch',
  'runLimit',
  'halfReservoir',
  'halfStrength',
  'halfPump',
  'plain',
  'antiSiphon',
  'halfBottle',
  'weakerStock',
  'twoHeaters',
  'cutOut',
  'batteryAir',
  'halfChange',
] as const;

export type ProtectionId = (typeof protectionIds)[number];

export interface ProtectionBought extends Bought<ProtectionId> {
  /** How many levels the failure takes beyond their limits, without and with it, as it is set. */
  readonly passes: readonly [without: number, withIt: number];
}

/** The protections that fit a failure, each on its own, with nobody noticing. */
export interface Protections {
  readonly first: FirstHourBought['first'];
  readonly followedH: number;
  readonly protections: readonly ProtectionBought[];
  /** Those that would take something beyond its limit that is kept now. */
  readonly worse: readonly ProtectionId[];
}

/** What the sheet on the wall needs of one failure. */
export interface OnTheWall {
  readonly fault: Scenario['faults'][number];
  readonly first: FirstHourBought['first'];
  readonly followedH: number;
  /** What moves air without mains, where the mains are what fails. */
  readonly air: readonly ActBought[];
}
