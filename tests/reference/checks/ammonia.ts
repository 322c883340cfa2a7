import { unionisedAmmoniaFraction } from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

export function ammoniaChecks(): Check[] {
  return readTable('ammonia.csv').map((row) => {
    const expected = row.number('fraction_NH3_CW95_kgsw_[-]');
    return {
      id: `ammonia/${row.text('case_id')}`,
      quantity: 'un-ionised fraction of ammonia',
      source: 'Clegg & Whitfield 1995 by PyCO2SYS 1.8.3.4, per kg of seawater (ammonia.csv)',
      howVerified: 'computed',
      expected,
      got: unionisedAmmoniaFraction({
        phTotal: row.number('pH_total_[-]'),
        tempC: row.number('temperature_degC'),
        salinityPractical: row.number('salinity_PSS78'),
      }),
      tolerance: expected * 0.005,
      unit: '-',
    };
  });
}
