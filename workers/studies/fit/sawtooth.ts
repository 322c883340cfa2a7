import type { Scenario } from '../../../shared/scenario/schema';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { limewaterSaturationGPerL } from '../../../shared/seawater/limewater';
import { oxidisedMeqPerG } from '../../../shared/species/additives';

/**
 * A top-off that carries alkalinity brings it in gulps, as large as its level switch lets them be,
 * and nobody knows where between two of them a test was taken: one σ of that, dKH.
 */
export function sawtoothDkh({ topOff, tank }: Scenario): number {
  const { additive, gramsPerL, deadBandL, reservoirL } = topOff;
  if (additive === 'none' || reservoirL === 0) return 0;
  const most = additive === 'calciumHydroxide' ? limewaterSaturationGPerL(tank.tempC) : Infinity;
  const meqPerL = Math.min(gramsPerL, most) * oxidisedMeqPerG(additive);
  // A stretch of which every part is as likely has σ of its length over √12.
  return (deadBandL * meqPerL) / tank.volumeL / meqPerLPerDkh / Math.sqrt(12);
}
