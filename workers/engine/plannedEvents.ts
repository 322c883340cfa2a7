import type { TankEvent } from '../../shared/events/event';
import { eventKinds } from '../../shared/events/registry';
import type { Scenario } from '../../shared/scenario/schema';

/** What the scenario plans to do to the tank, in order of time. */
export const plannedEvents = (scenario: Scenario): TankEvent[] =>
  eventKinds.flatMap((kind) => kind.occurrences(scenario)).sort((a, b) => a.timeH - b.timeH);
