import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';

/** The plan with that much in its reservoir, of a mix as strong; a plan without one gets plain water. */
export function filled(now: Scenario, reservoirL: number, gramsPerL?: number): Scenario {
  const { topOff } = now;
  const isPlain = gramsPerL === 0 || topOff.reservoirL === 0 || topOff.additive === 'none';
  const most = quantityAt(['topOff', 'reservoirL']).quantity.max;
  return {
    ...now,
    topOff: {
      ...topOff,
      reservoirL: Math.min(most, reservoirL),
      ...(isPlain
        ? { additive: 'none', gramsPerL: 0, settledG: 0 }
        : { gramsPerL: gramsPerL ?? topOff.gramsPerL }),
    },
  };
}
