import type { Scenario } from '../scenario/schema';
import type { Reaction } from '../species/reaction';
import type { ReferenceKey } from '../references';
import type { LedgerRole } from '../trace/trace';
import type { Motion } from './motion';
import type { View } from './view';

/** What typed use refers to; settled in the run-in of the first day. */
export interface GrowthReference {
  /** Saturation averaged over the day by the light's weight. */
  readonly omegaReference: number;
  /** Typed use is everything that life takes in a day; this much of it is not growth, eq/day. */
  readonly otherUseEqPerDay: number;
  /** Saturation at which growth stops: 1, or below what corals that were seen to grow had. */
  readonly stopOmega: number;
}

/** What is known when a trial is compiled, before its first hour. */
export interface Start extends GrowthReference {
  readonly scenario: Scenario;
  /** The tank's volume at the start, L: typed consumption refers to it and to no later volume. */
  readonly volumeL: number;
}

/**
 * One thing that happens in the water: a reaction and how fast it goes.
 * The reaction is held in moles; the engine advances it and every species follows.
 */
export interface Process<Settings> {
  readonly id: string;
  readonly label: string;
  /** What its ledger row counts as. */
  readonly role: LedgerRole;
  readonly cites: readonly ReferenceKey[];
  /** What the process needs, drawn from the scenario; null when this tank does not have it. */
  settings(start: Start): Settings | null;
  reaction(settings: Settings): Reaction;
  /**
   * mol of reaction per hour. A process that follows another is given that one's rate, 0 where this
   * tank has none of it.
   */
  rate(view: View, settings: Settings, leadMolPerH?: number): number;
  /**
   * How the rate changes by itself, mol/h in an hour, as the tank moves. Left out where it stays;
   * elsewhere the steps would be shorter, if as true, and `tests/laws/drifts.test.ts` asks for it.
   */
  drift?(view: View, motion: Motion, settings: Settings, lead: Lead): number;
  /** The id of a process whose rate this one is a share of. */
  readonly follows?: string;
}

/** What a process that follows another is given: that one's rate, mol/h, and how it drifts, mol/h². */
export interface Lead {
  readonly molPerH: number;
  readonly driftMolPerH2: number;
}

/**
 * A process with the settings that go with it, which its two laws are to be given: what a tank's
 * engine runs. What type they have is the process's own affair.
 */
export interface BoundProcess {
  readonly reaction: Reaction;
  readonly settings: unknown;
  rate(view: View, settings: unknown, leadMolPerH?: number): number;
  drift?(view: View, motion: Motion, settings: unknown, lead: Lead): number;
}

/** A process as everybody else sees it. */
export interface ProcessKind {
  readonly id: string;
  readonly label: string;
  readonly role: LedgerRole;
  readonly cites: readonly ReferenceKey[];
  readonly follows?: string;
  /** The process for this tank; null when this tank does not have it. */
  bind(start: Start): BoundProcess | null;
}

export const defineProcess = <Settings>(
  process: Process<Settings>,
): Process<Settings> & ProcessKind => ({
  ...process,
  bind(start) {
    const settings = process.settings(start);
    if (settings === null) return null;
    // As methods, the laws take the settings of their own process and, to all others, anything.
    const { rate, drift }: Pick<Process<Settings>, 'rate' | 'drift'> = process;
    return { reaction: process.reaction(settings), settings, rate, ...(drift && { drift }) };
  },
});
