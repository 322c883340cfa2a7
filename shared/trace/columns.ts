import { say } from '../words/quantities';

/** One column of a trace. The CSV header is its id: it ends in its unit. */
export interface Column {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
}

const column = <const Id extends string>(id: Id, label: string, unit: string) => ({
  id,
  label,
  unit,
});

/** What is written down at every hour, in this order. Ledger columns follow, one for each row. */
export const columns = [
  column('time_h', say.columns.time, 'h'),
  column('alkalinity_dkh', say.limits.alkalinity, 'dKH'),
  column('ph_nbs', say.limits.ph, 'NBS'),
  column('ph_total', say.columns.phTotal, 'total'),
  column('calcium_mg_l', say.limits.calcium, 'mg/L'),
  column('magnesium_mg_l', say.limits.magnesium, 'mg/L'),
  column('salinity_ppt', say.limits.salinity, 'ppt'),
  column('temperature_c', say.columns.temperature, '°C'),
  column('omega_aragonite', say.lines.omega, ''),
  column('dic_umol_kg', say.columns.dic, 'µmol/kg'),
  column('alkalinity_umol_kg', say.limits.alkalinity, 'µmol/kg'),
  column('pco2_uatm', say.columns.pco2, 'µatm'),
  column('room_pco2_uatm', say.columns.roomPco2, 'µatm'),
  column('volume_l', say.columns.volume, 'L'),
  column('reservoir_l', say.columns.reservoir, 'L'),
  column('topoff_l', say.columns.topOff, 'L'),
  column('nitrate_mg_l', say.columns.nitrate, 'mg/L'),
  column('phosphate_mg_l', say.columns.phosphate, 'mg/L'),
  column('ammonia_mg_l', say.columns.totalAmmonia, 'mg/L'),
  column('unionised_ammonia_mg_l', say.lines.ammonia, 'mg/L'),
  column('oxygen_mg_l', say.lines.oxygen, 'mg/L'),
  column('oxygen_saturation_pct', say.columns.oxygenSaturation, '%'),
  column('skeleton_g', say.columns.skeleton, 'g'),
  column('light', say.columns.light, '0–1'),
  column('flags', say.columns.flags, 'bits'),
] as const satisfies readonly Column[];

export type ColumnId = (typeof columns)[number]['id'];

/** Alkalinity brought (+) or taken (−) since the start by one ledger row, dKH of the start volume. */
export const ledgerColumnId = (row: string): string => `from_${row}_dkh`;

/** Above this the constants, and so the screen, say no more than '>9.5'. */
export const HIGHEST_PH_NBS = 9.5;

/** What a set bit in the flags column says. */
export const flags = {
  highPh: { bit: 1 },
  temperature: { bit: 2 },
  salinity: { bit: 4 },
  omega: { bit: 8 },
} as const;

export type FlagId = keyof typeof flags;
