import { calendarOf, momentH } from '../../../shared/scenario/clock';
import type { Scenario } from '../../../shared/scenario/schema';

/** Moves what breaks, and what is done about it, to another hour; before the trial is a day later. */
export function shifted(scenario: Scenario, hours: number): Scenario {
  const { clockHour } = scenario.start;
  const first = Math.min(...scenario.faults.map((fault) => momentH(fault, clockHour)));
  const by = first + hours < 0 ? hours + 24 : hours;
  const move = <T extends { day: number; hour: number }>(thing: T): T => {
    return { ...thing, ...calendarOf((thing.day - 1) * 24 + thing.hour + by) };
  };
  return {
    ...scenario,
    faults: scenario.faults.map(move),
    responses: scenario.responses.map(move),
  };
}
