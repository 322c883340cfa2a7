import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions } from '../../engine/simulation';
import { dumpAt, excess, worstHour } from '../drill/dump';

/** What a stuck pump may not pass: the pH that harms, and the keeper's highest alkalinity. */
const HARM: readonly string[] = ['phHarm', 'alkalinityHigh'];
/** And where more runs onto the floor. */
export const RIM: readonly string[] = ['overflow'];
/** A reservoir is filled to the half litre, or to a twentieth where it is small. */
const fillText = (litres: number) =>
  litres >= 5 ? Math.floor(litres * 2) / 2 : Math.floor(litres * 20) / 20;
const TRIES = 7;

/** Whether the whole reservoir, going in at the worst hour, stays inside. */
export function dumpHolds(scenario: Scenario, lines = HARM): boolean {
  const hour = worstHour(scenario, lines);
  return excess(dumpAt(scenario, hour), lines, usualOptions) <= 0;
}

/** The most of something in the top-off with which a full dump stays inside. */
function most(scenario: Scenario, lever: 'reservoirL' | 'gramsPerL', lines = HARM): number {
  const set = scenario.topOff[lever];
  const hour = worstHour(scenario, lines);
  const holds = (value: number) => {
    const topOff = { ...scenario.topOff, [lever]: value };
    return excess(dumpAt({ ...scenario, topOff }, hour), lines, usualOptions) <= 0;
  };
  if (holds(set)) return set;
  let [low, high] = [0, set];
  for (let i = 0; i < TRIES; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** The most that may stand in the reservoir so that a full dump stays inside, L. */
export function fullestReservoirL(scenario: Scenario, lines = HARM): number {
  const litres = most(scenario, 'reservoirL', lines);
  return litres === scenario.topOff.reservoirL ? litres : fillText(litres);
}

/** The strongest mix, g/L, of which a full dump of the whole reservoir stays inside. */
export function strongestMixGPerL(scenario: Scenario): number {
  const gramsPerL = most(scenario, 'gramsPerL');
  return gramsPerL === scenario.topOff.gramsPerL ? gramsPerL : Math.floor(gramsPerL * 100) / 100;
}
