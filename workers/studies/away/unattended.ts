import { newFault } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';

/** Every refill is of plain water: a mix of nothing, from the day before on, so that what was mixed stays. */
const PLAIN = { ...newFault('strongMix', { times: 0, endsAfterH: 8760 }), day: 0 };

/**
 * The tank with nobody's hands in it for so many days: no dose and no water change by hand, nothing
 * mixed. Reservoir and bottles are full when the keeper leaves; where somebody comes every so many days,
 * the reservoir is filled up then, with plain fresh water whatever it held or with its mix. 0: nobody does.
 */
export function unattended(
  now: Scenario,
  days: number,
  refillEveryDays = 0,
  refilledWith: 'plain' | 'mix' = 'plain',
): Scenario {
  const { topOff, waterChanges, start } = now;
  return {
    ...now,
    ...{ days, additions: [], responses: [] },
    faults: refillEveryDays > 0 && refilledWith === 'plain' ? [PLAIN] : [],
    waterChanges: { ...waterChanges, percent: 0 },
    topOff: { ...topOff, refillEveryDays, refillHour: start.clockHour },
  };
}
