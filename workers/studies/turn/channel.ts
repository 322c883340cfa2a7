import { bottled } from '../../../shared/recipe/bottled';
import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import {
  STOCK_G_PER_L,
  twoPart,
  type Carbonate,
  type PairNames,
} from '../../../shared/recipe/twoPart';
import { MOST_DOSERS } from '../../../shared/scenario/dosing';
import { quantityAt } from '../../../shared/scenario/fields';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Lever } from './lever';

/** One more channel, a pair of pumps, beside what runs; none where the plan has no room for it. */
export function channelOf(
  plan: Scenario,
  carbonate: Carbonate,
  names: PairNames | undefined,
): Lever[] {
  const { dosers, tank, corals } = plan;
  if (dosers.length + 2 > MOST_DOSERS) return [];
  const gramsPerDay = gramsForDkh(carbonate, 3 * (corals.useDkhPerDay + 0.5), tank.volumeL);
  const mlPerDay = (gramsPerDay / STOCK_G_PER_L[carbonate]) * 1000;
  return [
    {
      ...{ kind: 'channel', pump: dosers.length, from: 0 },
      most: Math.min(mlPerDay, quantityAt(['dosers', 0, 'mlPerDay']).quantity.max),
      rounded: threeFigures,
      set: (base, ml) => ({
        ...base,
        dosers: [...dosers, ...bottled(twoPart(carbonate, ml, base, names))],
      }),
    },
  ];
}
