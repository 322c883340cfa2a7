import {
  carbonateFromAlkalinityDic,
  carbonateFromAlkalinityPco2,
  carbonateFromAlkalinityPh,
  type CarbonateSystem,
} from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable, type Row } from '../table';

const phColumns = {
  phTotal: 'pH_total_[-]',
  phFree: 'pH_free_[-]',
  phSws: 'pH_sws_[-]',
  phNbs: 'pH_nbs_TWB82fH_[-]',
} as const;

/** Column of solve.csv, its name in crosscheck.csv and unit; pCO2 has its tolerance set below. */
const relativeColumns = {
  pco2Uatm: ['pCO2_[uatm]', 'pCO2', 'µatm'],
  fco2Uatm: ['fCO2_[uatm]', 'fCO2', 'µatm'],
  dicUmolPerKg: ['DIC_[umol_kgsw-1]', 'DIC', 'µmol/kg'],
  co2UmolPerKg: ['CO2aq_[umol_kgsw-1]', 'CO2', 'µmol/kg'],
  hco3UmolPerKg: ['HCO3_[umol_kgsw-1]', 'HCO3', 'µmol/kg'],
  co3UmolPerKg: ['CO3_[umol_kgsw-1]', 'CO3', 'µmol/kg'],
  omegaAragonite: ['omega_aragonite_[-]', 'OmA', '-'],
  omegaCalcite: ['omega_calcite_[-]', 'OmC', '-'],
} as const;

/** What pH alone decides, in µmol/kg: as near as pH is asked to be, 1e-4, which is 0.023 % of [H+]. */
const byPhColumns = {
  boh4UmolPerKg: 'borate_alkalinity_[umol_kgsw-1]',
  ohUmolPerKg: 'OH_[umol_kgsw-1]',
  hFreeUmolPerKg: 'Hfree_[umol_kgsw-1]',
  hso4UmolPerKg: 'HSO4_[umol_kgsw-1]',
  hfUmolPerKg: 'HF_[umol_kgsw-1]',
} as const;
const BY_PH = 1e-4 * Math.LN10;

export function carbonateChecks(): Check[] {
  const tolerance = relativeTolerances();
  return readTable('solve.csv').flatMap((row) => {
    const solved = solve(row);
    const origin = {
      id: `solve/${row.text('regime')}/${row.text('case_id')}`,
      source: 'PyCO2SYS 1.8.3.4 (solve.csv)',
      howVerified: 'computed',
    } as const;
    const phs = Object.entries(phColumns).map(([name, column]) => ({
      ...origin,
      quantity: name,
      expected: row.number(column),
      got: solved[name as keyof typeof phColumns],
      tolerance: 1e-4,
      unit: 'pH',
    }));
    const others = Object.entries(relativeColumns).map(([name, [column, quantity, unit]]) => ({
      ...origin,
      quantity: name,
      expected: row.number(column),
      got: solved[name as keyof typeof relativeColumns],
      tolerance: row.number(column) * (name === 'pco2Uatm' ? 5e-4 : tolerance(quantity)),
      unit,
    }));
    const byPh = Object.entries(byPhColumns).map(([name, column]) => ({
      ...origin,
      quantity: name,
      expected: row.number(column),
      got: solved[name as keyof typeof byPhColumns],
      tolerance: row.number(column) * BY_PH,
      unit: 'µmol/kg',
    }));
    return [...phs, ...others, ...byPh];
  });
}

/** As close as the nearest of the other libraries comes to the table in the normal range. */
function relativeTolerances(): (quantity: string) => number {
  const rows = readTable('crosscheck.csv').filter((row) => row.text('KF_option') === 'PF87tot');
  return (quantity) =>
    Math.min(
      ...rows
        .filter((row) => row.text('quantity') === quantity)
        .map((row) => row.number('max_normal')),
    );
}

function solve(row: Row): CarbonateSystem {
  const water = {
    alkalinityUmolPerKg: row.number('TA_in_[umol_kgsw-1]'),
    salinityPractical: row.number('salinity_PSS78'),
    tempC: row.number('temperature_degC'),
  };
  switch (row.text('input_pair')) {
    case 'TA_DIC':
      return carbonateFromAlkalinityDic({
        ...water,
        dicUmolPerKg: row.number('DIC_in_[umol_kgsw-1]'),
      });
    case 'TA_pH':
      return carbonateFromAlkalinityPh({ ...water, phTotal: row.number('pH_total_in_[-]') });
    case 'TA_pCO2':
      return carbonateFromAlkalinityPco2({ ...water, pco2Uatm: row.number('pCO2_in_[uatm]') });
    default:
      throw new Error(`unknown input pair in ${row.text('case_id')}`);
  }
}
