import {
  co2PerO2TransferVelocity,
  equilibriumConstants,
  pco2WetUatm,
  schmidtCo2,
  schmidtO2,
} from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

/** To the digits printed: half of the last one. */
export function gasChecks(): Check[] {
  const schmidt = readTable('schmidt_K0.csv').flatMap((row) => {
    const tempC = row.number('T_C');
    const { k0 } = equilibriumConstants({ tempC, salinityPractical: 35 });
    const columns: [
      quantity: string,
      column: string,
      got: number,
      halfDigit: number,
      unit: string,
    ][] = [
      ['Schmidt number of CO2', 'Sc_CO2_S35', schmidtCo2(tempC), 0.05, '-'],
      ['Schmidt number of O2', 'Sc_O2_S35', schmidtO2(tempC), 0.05, '-'],
      ['K0', 'K0_S35_mol_kg_atm', k0, 5e-6, 'mol/kg/atm'],
      ['k(CO2) over k(O2)', 'kCO2_over_kO2', co2PerO2TransferVelocity(tempC), 5e-4, '-'],
    ];
    return columns.map(([quantity, column, got, tolerance, unit]): Check => {
      const id = `gas/${tempC}C`;
      const source = 'Wanninkhof 2014, Weiss 1974 (schmidt_K0.csv)';
      const expected = row.number(column);
      return { id, quantity, source, howVerified: 'computed', expected, got, tolerance, unit };
    });
  });
  const wetAir = readTable('constants.csv').map((row): Check => {
    const tempC = row.number('temperature_degC');
    const salinity = row.number('salinity_PSS78');
    return {
      id: `gas/${row.text('case_id')}`,
      quantity: 'pCO2 of wet air over ppm of dry air',
      source: 'Weiss & Price 1980 by PyCO2SYS 1.8.3.4 (constants.csv)',
      howVerified: 'computed',
      expected: row.number('vapour_pressure_factor_pCO2_per_xCO2dry_1atm_[-]'),
      got: pco2WetUatm(1, tempC, salinity),
      tolerance: 1e-9,
      unit: 'µatm/ppm',
    };
  });
  return [...schmidt, ...wetAir];
}
