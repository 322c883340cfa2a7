import type { View } from '../processes/view';
import type { Factors } from '../scenario/factors';
import type { Scenario } from '../scenario/schema';
import type { Block } from '../species/block';

/** `outside` is everything beyond the tank: taps, bags of salt, drains, the air that takes vapour. */
export type VesselId = 'tank' | 'outside' | 'reservoir' | `stock${number}`;

/** A pipe carries one number, and the composition of where it comes from (vapour: water alone). */
export interface Pipe {
  readonly id: string;
  readonly label: string;
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
}

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
  /** Moles between the outside, the water of a vessel and a solid kept in it. */
  dissolveLime(vessel: VesselId, molFromSolid: number): void;
  addLime(mol: number): void;
  /** Limewater of the reservoir that the room's CO2 has turned to chalk. */
  chalkInReservoir(mol: number): void;
  limeMol(): number;
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
