import type { Check } from '../reference/check';
import { yearClosures } from '../laws/year';

/** Both closures of a year as rows: what is left should be rounding. */
export function yearChecks(): Check[] {
  const { alkalinityUmolPerKg, elements } = yearClosures();
  const origin = {
    source: 'limewater-holds.json for 365 days: start and ledger, or all accounts',
    howVerified: 'computed',
    expected: 0,
  } as const;
  return [
    {
      ...origin,
      id: 'year/alkalinity',
      quantity: 'alkalinity not booked',
      got: alkalinityUmolPerKg,
      tolerance: 1e-3,
      unit: 'µmol/kg',
    },
    ...Object.entries(elements).map(([element, got]) => ({
      ...origin,
      id: `year/${element}`,
      quantity: 'share of an element lost or made',
      got,
      tolerance: 1e-12,
      unit: '1',
    })),
  ];
}
