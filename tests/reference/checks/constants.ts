import { equilibriumConstants, type EquilibriumConstants } from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

type ConstantName = keyof EquilibriumConstants;

// The tolerance of a pK: 2e-5. What is not a pK is held to the digits printed.
const pkColumns = {
  k0: 'pK0_W74_[mol_kgsw-1_atm-1]',
  k1: 'pK1_LDK00_total_[mol_kgsw-1]',
  k2: 'pK2_LDK00_total_[mol_kgsw-1]',
  kb: 'pKB_D90_total_[mol_kgsw-1]',
  kw: 'pKW_M95_total_PF87KF_[mol2_kgsw-2]',
  ks: 'pKS_D90_free_[mol_kgsw-1]',
  kf: 'pKF_PF87_total_[mol_kgsw-1]',
  kspAragonite: 'pKsp_aragonite_M83_[mol2_kgsw-2]',
  kspCalcite: 'pKsp_calcite_M83_[mol2_kgsw-2]',
} as const satisfies Partial<Record<ConstantName, string>>;

const plainColumns = {
  hTotalPerHFree: 'ratio_Htotal_to_Hfree_[-]',
  hSwsPerHTotal: 'ratio_Hsws_to_Htotal_PF87_[-]',
  fco2PerPco2: 'fugacity_factor_fCO2_per_pCO2_1atm_[-]',
} as const satisfies Partial<Record<ConstantName, string>>;

export function constantsChecks(): Check[] {
  return readTable('constants.csv').flatMap((row) => {
    const k = equilibriumConstants({
      tempC: row.number('temperature_degC'),
      salinityPractical: row.number('salinity_PSS78'),
    });
    const origin = {
      id: `constants/${row.text('case_id')}`,
      source: 'PyCO2SYS 1.8.3.4 (constants.csv)',
      howVerified: 'computed',
    } as const;
    return [
      ...entries(pkColumns).map(([name, column]) => ({
        ...origin,
        quantity: `pK of ${name}`,
        expected: row.number(column),
        got: -Math.log10(k[name]),
        tolerance: 2e-5,
        unit: 'log10',
      })),
      ...entries(plainColumns).map(([name, column]) => ({
        ...origin,
        quantity: name,
        expected: row.number(column),
        got: k[name],
        tolerance: 1e-9,
        unit: '-',
      })),
    ];
  });
}

function entries<Key extends string>(columns: Readonly<Record<Key, string>>): [Key, string][] {
  return Object.entries(columns) as [Key, string][];
}
