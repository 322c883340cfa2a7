import type { Scenario } from '../../../shared/scenario/schema';
import { settle } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';

/** Today's use refers to the saturation of today: at another level the law goes on from there. */
export function withReference(now: Scenario, options: SimulationOptions): Scenario {
  if (now.start.omegaReference > 0) return now;
  const { omegaReference } = settle(now, options);
  return { ...now, start: { ...now.start, omegaReference } };
}
