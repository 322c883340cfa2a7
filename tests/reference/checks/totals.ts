import {
  totalBorateMolPerKg,
  totalCalciumMolPerKg,
  totalFluorideMolPerKg,
  totalSulfateMolPerKg,
} from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

const columns: [quantity: string, column: string, molPerKg: (salinity: number) => number][] = [
  ['total borate, Uppström', 'total_borate_U74_[umol_kgsw-1]', (s) => totalBorateMolPerKg(s)],
  ['total borate, Lee', 'total_borate_L10_[umol_kgsw-1]', (s) => totalBorateMolPerKg(s, 'lee2010')],
  ['total sulfate', 'total_sulfate_[umol_kgsw-1]', totalSulfateMolPerKg],
  ['total fluoride', 'total_fluoride_[umol_kgsw-1]', totalFluorideMolPerKg],
  ['total calcium', 'total_calcium_RT67_40.087_[umol_kgsw-1]', totalCalciumMolPerKg],
];

export function totalsChecks(): Check[] {
  return readTable('constants.csv').flatMap((row) =>
    columns.map(([quantity, column, molPerKg]) => ({
      id: `totals/${row.text('case_id')}`,
      quantity,
      source: 'PyCO2SYS 1.8.3.4 (constants.csv)',
      howVerified: 'computed',
      expected: row.number(column),
      got: molPerKg(row.number('salinity_PSS78')) * 1e6,
      tolerance: row.number(column) * 1e-9,
      unit: 'µmol/kg',
    })),
  );
}
