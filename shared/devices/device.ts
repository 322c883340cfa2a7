import type { View } from '../processes/view';
import type { Factors } from '../scenario/factors';
import type { Scenario } from '../scenario/schema';
import type { Block } from '../species/block';
import type { Reaction } from '../species/reaction';
import type { DissolvedId, PoolId } from '../species/species';
import type { LedgerRole } from '../trace/trace';

/** `outside` is everything beyond the tank: taps, bags of salt, drains, the air that takes vapour. */
export type VesselId = 'tank' | 'outside' | `reservoir${string}` | `stock${number}`;

/** A pipe carries one number, and the composition of where it comes from (vapour: water alone). */
export interface Pipe {
  readonly id: string;
  readonly label: string;
  /** What its ledger row counts as. */
  readonly role: LedgerRole;
  /** Which of the plan's pumps it is, counted from 0. */
  readonly pump?: number;
  readonly from: VesselId;
  readonly to: VesselId;
  readonly vapour?: boolean;
  /** A source that never changes: one kilogram of it. Goes with `from: 'outside'`. */
  readonly perKg?: Block;
  kgPerH: number;
}

/** A vessel that a device brings along, with what is in it at the start. */
export interface Vessel {
  readonly id: VesselId;
  readonly contents: Block;
  /** A reservoir is what evaporation is replaced from. */
  readonly role: VesselRole;
  /** What lies on its floor at the start, and which species each mole of it is. */
  readonly undissolved?: {
    readonly pool: PoolId;
    readonly species: DissolvedId;
    readonly mol: number;
  };
  /** Water that it holds, kg: what is more is poured away when a plan with a smaller one goes on. */
  readonly holdsKg?: number;
  /** Whether it held the same mix where the tank ran by another scenario: then that is used up. */
  isMixedAs(before: Scenario): boolean;
}

export type VesselRole = 'reservoir' | 'bottle';

/** What a device may do beyond its own pipes. All of it goes through the books. */
export interface Plant {
  /** Light now, and how it changes by itself until the next act. */
  setLight(level: number, slopePerH: number): void;
  setPower(on: boolean): void;
  /** Gas exchange from now on, 1/h. */
  setAeration(kLaPerH: number): void;
  waterKg(vessel: VesselId): number;
  contents(vessel: VesselId): Block;
  /** Moves water from one vessel to another at once; `reason` is the ledger row. */
  transfer(reason: string, from: VesselId, to: VesselId, block: Block): void;
  /** Advances a reaction by so many moles in a vessel at once; booked with the refills. */
  react(vessel: VesselId, reaction: Reaction, mol: number): void;
  /** mol in a pool. */
  inPool(pool: PoolId): number;
}

/** What a device keeps in mind from act to act: plain values, so that another run may go on from them. */
export type Memory = Record<string, number | boolean>;

/** Senses, decides, acts: an act only sets a flow, a light or a vessel's contents. */
export interface Device {
  readonly id: string;
  readonly vessels: readonly Vessel[];
  readonly pipes: readonly Pipe[];
  readonly memory: readonly Memory[];
  /** The next moment at which it acts by the clock. */
  nextClockH(timeH: number): number;
  /** A signal that it answers when it has fallen to zero; Infinity when it watches nothing. */
  watch(view: View): number;
  /** How that signal moves with the tank's volume, per litre: the engine aims with it. */
  watchPerL(): number;
  act(view: View, plant: Plant): void;
}

/** One kind of device: none, one or several in a tank. */
export interface DeviceKind {
  readonly id: string;
  build(scenario: Scenario, factors: Factors): Device[];
}

/** A device without vessels, pipes, clock or sensor, to be completed. */
export const passive = {
  vessels: [],
  pipes: [],
  memory: [],
  nextClockH: () => Infinity,
  watch: () => Infinity,
  watchPerL: () => 0,
  act: () => {},
} as const;
