import type { Scenario } from '../scenario/schema';
import type { Reaction } from '../species/reaction';
import type { ReferenceKey } from '../references';
import type { View } from './view';

/** What is known when a trial is compiled, before its first hour. */
export interface Start {
  readonly scenario: Scenario;
  /** The tank's volume at the start, L: typed consumption refers to it and to no later volume. */
  readonly volumeL: number;
  /** Saturation at the start, averaged over the day by the light's weight; settled in the run-in. */
  omegaReference: number;
}

/**
 * One thing that happens in the water: a reaction and how fast it goes.
 * The reaction is held in moles; the engine advances it and every species follows.
 */
export interface Process<Settings> {
  readonly id: string;
  readonly label: string;
  readonly cites: readonly ReferenceKey[];
  /** What the process needs, drawn from the scenario; null when this tank does not have it. */
  settings(start: Start): Settings | null;
  reaction(settings: Settings): Reaction;
  /** mol of reaction per hour. */
  rate(view: View, settings: Settings): number;
}

/** Ties the settings of one process together for the compiler, then forgets their type. */
export const defineProcess = <Settings>(process: Process<Settings>): Process<Settings> => process;
