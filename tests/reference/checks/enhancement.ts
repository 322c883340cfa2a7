import { SeawaterConstants } from '../../../shared/seawater/constants';
import { co2Enhancement, Film } from '../../../shared/seawater/enhancement';
import type { Check } from '../check';

/** Transfer velocity in m/h, pH (total), and how many times faster, at S 35 and 25 °C. */
const worked = [
  [0.02, 8.1, 2.1],
  [0.02, 9, 4.2],
  [0.1, 8.6, 1.1],
] as const;

/** How many times faster at 25 °C, and its slopes. */
export const co2EnhancementAt25 = (k: SeawaterConstants, hTotal: number, transferMPerH: number) =>
  co2Enhancement(k, hTotal, new Film().at(25), transferMPerH, {
    ...{ times: 0, timesPerLnH: 0, timesPerLnTransfer: 0 },
  });

export function enhancementChecks(): Check[] {
  const k = new SeawaterConstants();
  k.set(25, 35);
  return worked.map(([transferMPerH, phTotal, expected]) => ({
    id: `enhancement/${transferMPerH} m/h/pH ${phTotal}`,
    quantity: 'CO2 across the surface, with reactions in its film over without',
    source: 'Hoover & Berkshire 1969 with Johnson 1982, worked separately',
    howVerified: 'computed',
    expected,
    got: co2EnhancementAt25(k, 10 ** -phTotal, transferMPerH).times,
    tolerance: expected * 0.02,
    unit: '×',
  }));
}
