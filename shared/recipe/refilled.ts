import type { Scenario } from '../scenario/schema';

/** A reservoir is emptied by four fifths, then filled (common practice). */
const USED_SHARE = 0.8;

/** Refilled before it runs dry at so many litres a day, at the latest, whole days apart. */
export function refilled(scenario: Scenario, litresPerDay: number): Scenario {
  const { topOff } = scenario;
  const lasts = Math.max(1, Math.floor((USED_SHARE * topOff.reservoirL) / litresPerDay));
  const often = topOff.refillEveryDays > 0 ? topOff.refillEveryDays : lasts;
  return { ...scenario, topOff: { ...topOff, refillEveryDays: Math.min(often, lasts) } };
}
