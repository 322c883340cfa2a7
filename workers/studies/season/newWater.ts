import type { Scenario } from '../../../shared/scenario/schema';
import type { SeasonId } from './quantity';

/** What new water holds as it is mixed: everything in the bag follows the salinity. */
export function newWaterHolds({
  waterChanges,
}: Pick<Scenario, 'waterChanges'>): Readonly<Record<SeasonId, number>> {
  const { salt, salinityPractical: salinity } = waterChanges;
  const scale = salinity / salt.atSalinityPractical;
  return {
    calcium: salt.calciumMgPerL * scale,
    magnesium: salt.magnesiumMgPerL * scale,
    salinity,
  };
}
