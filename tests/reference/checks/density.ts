import { seawaterDensityKgPerM3 } from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

export function densityChecks(): Check[] {
  return readTable('density.csv').map((row) => ({
    id: `density/${row.text('case_id')}`,
    quantity: 'density',
    source: 'EOS-80 by python-seawater, ITS-90 in (density.csv)',
    howVerified: 'computed',
    expected: row.number('rho_EOS80_1atm_T90in_[kg_m-3]'),
    got: seawaterDensityKgPerM3({
      tempC: row.number('temperature_ITS90_degC'),
      salinityPractical: row.number('salinity_PSS78'),
    }),
    tolerance: 2e-3,
    unit: 'kg/m³',
  }));
}
