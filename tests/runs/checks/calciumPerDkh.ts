import { readColumn } from '../../../shared/trace/trace';
import { run } from '../../../workers/engine/run';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

/** Corals alone in a closed tank: calcium that goes with each dKH. */
export function calciumPerDkhChecks(): Check[] {
  return [0.2, 0.8, 2].map((useDkhPerDay) => {
    const { trace } = run(quietTank({ corals: { useDkhPerDay } }));
    const fall = (id: 'alkalinity_dkh' | 'calcium_mg_l') => {
      const values = readColumn(trace, id);
      return values[0]! - values.at(-1)!;
    };
    return {
      id: `calcium-per-dkh/${useDkhPerDay} dKH/day`,
      quantity: 'calcium taken up with each dKH',
      source: 'CaCO3: 0.35665 meq/L / 2 · 40.078 g/mol',
      howVerified: 'computed',
      expected: 7.147,
      got: fall('calcium_mg_l') / fall('alkalinity_dkh'),
      tolerance: 0.01,
      unit: 'mg/L per dKH',
    };
  });
}
