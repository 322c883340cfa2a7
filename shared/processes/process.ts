import type { Scenario } from '../scenario/schema';
import type { Reaction } from '../species/reaction';
import type { ReferenceKey } from '../references';
import type { LedgerRole } from '../trace/trace';
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
  /** mol of reaction per hour. */
  rate(view: View, settings: Settings): number;
}

/** A process with its settings in it: what a tank's engine runs. */
export interface BoundProcess {
  readonly reaction: Reaction;
  /** mol of reaction per hour. */
  rate(view: View): number;
}

/** A process as everybody else sees it: what type its settings have is its own affair. */
export interface ProcessKind {
  readonly id: string;
  readonly label: string;
  readonly role: LedgerRole;
  readonly cites: readonly ReferenceKey[];
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
    const { rate } = process;
    return { reaction: process.reaction(settings), rate: (view) => rate(view, settings) };
  },
});
