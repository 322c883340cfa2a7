import type { Plant } from '../devices/device';
import type { View } from '../processes/view';
import type { Scenario } from '../scenario/schema';
import type { LedgerRole } from '../trace/trace';

/** Something done to the tank at a moment, not over a stretch of time. */
export interface TankEvent {
  readonly timeH: number;
  apply(view: View, plant: Plant): void;
}

/** Those within the trial, in order of time. */
export const inOrder = (events: readonly TankEvent[], { days }: Scenario): TankEvent[] =>
  events.filter(({ timeH }) => timeH >= 0 && timeH <= days * 24).sort((a, b) => a.timeH - b.timeH);

export interface EventKind {
  /** Also the ledger row. */
  readonly id: string;
  readonly label: string;
  /** What its ledger row counts as. */
  readonly role: LedgerRole;
  /** Every occurrence within the trial, in order of time. */
  occurrences(scenario: Scenario): TankEvent[];
}
