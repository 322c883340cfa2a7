import { newFault } from '../scenario/newFault';
import type { Scenario } from '../scenario/schema';

/** The mains stay away for a day from two in the night on (common practice), in a plan as it runs. */
export const nightCut = (plan: Scenario): Scenario => ({
  ...plan,
  days: 4,
  faults: [newFault('powerCut', { day: 2, hour: 2, endsAfterH: 24 })],
  responses: [],
});
