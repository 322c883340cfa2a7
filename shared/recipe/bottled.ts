import { quantityAt } from '../scenario/fields';
import type { Scenario } from '../scenario/schema';

/** Bottles no larger than a plan can say; the pump then draws on one that is mixed anew sooner. */
export function bottled(dosers: Scenario['dosers']): Scenario['dosers'] {
  const most = quantityAt(['dosers', 0, 'stockL']).quantity.max;
  return dosers.map((doser) => ({ ...doser, stockL: Math.min(most, doser.stockL) }));
}
