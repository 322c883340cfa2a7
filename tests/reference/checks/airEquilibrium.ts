import {
  carbonateFromAlkalinityPco2,
  pco2WetUatm,
  umolPerKgFromDkh,
} from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

export function airEquilibriumChecks(): Check[] {
  return readTable('eq_pH_dKH_CO2.csv').flatMap((row) => {
    const tempC = row.number('T');
    const salinityPractical = row.number('S');
    const ppmDry = row.number('xCO2_ppm');
    const solved = carbonateFromAlkalinityPco2({
      alkalinityUmolPerKg: row.number('TA_umol_kg'),
      tempC,
      salinityPractical,
      pco2Uatm: pco2WetUatm(ppmDry, tempC, salinityPractical),
    });
    const dkh = row.number('dKH');
    const origin = {
      id: `air/${dkh}dKH/${ppmDry}ppm`,
      source: 'PyCO2SYS 1.8.3.4 (eq_pH_dKH_CO2.csv)',
      howVerified: 'computed',
    } as const;
    const phs = [
      ['phTotal', 'pH_total', solved.phTotal],
      ['phNbs', 'pH_NBS', solved.phNbs],
    ] as const;
    return [
      ...phs.map(([quantity, column, got]) => ({
        ...{ ...origin, quantity, expected: row.number(column), got, tolerance: 0.004, unit: 'pH' },
      })),
      {
        ...origin,
        quantity: 'alkalinity from dKH',
        expected: row.number('TA_umol_kg'),
        got: umolPerKgFromDkh(dkh, tempC, salinityPractical),
        tolerance: 0.5,
        unit: 'µmol/kg',
      },
    ];
  });
}
