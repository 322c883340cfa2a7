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
  column('time_h', 'time', 'h'),
  column('alkalinity_dkh', 'alkalinity', 'dKH'),
  column('ph_nbs', 'pH', 'NBS'),
  column('ph_total', 'pH, total scale', 'total'),
  column('calcium_mg_l', 'calcium', 'mg/L'),
  column('magnesium_mg_l', 'magnesium', 'mg/L'),
  column('salinity_ppt', 'salinity', 'ppt'),
  column('temperature_c', 'temperature', '°C'),
  column('omega_aragonite', 'saturation (Ω)', ''),
  column('dic_umol_kg', 'inorganic carbon (DIC)', 'µmol/kg'),
  column('alkalinity_umol_kg', 'alkalinity', 'µmol/kg'),
  column('pco2_uatm', 'CO₂ in the water', 'µatm'),
  column('room_pco2_uatm', 'CO₂ of the room, moist', 'µatm'),
  column('volume_l', 'volume', 'L'),
  column('reservoir_l', 'reservoir', 'L'),
  column('topoff_l', 'top-off so far', 'L'),
  column('nitrate_mg_l', 'nitrate', 'mg/L'),
  column('phosphate_mg_l', 'phosphate', 'mg/L'),
  column('ammonia_mg_l', 'total ammonia', 'mg/L'),
  column('unionised_ammonia_mg_l', 'un-ionised ammonia', 'mg/L'),
  column('skeleton_g', 'skeleton laid down', 'g'),
  column('light', 'light', '0–1'),
  column('flags', 'outside a formula’s range', 'bits'),
] as const satisfies readonly Column[];

export type ColumnId = (typeof columns)[number]['id'];

/** Alkalinity brought (+) or taken (−) since the start by one ledger row, dKH of the start volume. */
export const ledgerColumnId = (row: string): string => `from_${row}_dkh`;

/** Above this the constants, and so the screen, say no more than '>9.5'. */
export const HIGHEST_PH_NBS = 9.5;

/** What a set bit in the flags column says. */
export const flags = {
  highPh: { bit: 1, text: 'pH above 9.5: beyond the constants’ range; brucite is not modelled' },
  temperature: { bit: 2, text: 'temperature outside the constants’ range' },
  salinity: { bit: 4, text: 'salinity outside the constants’ range' },
  omega: { bit: 8, text: 'Ω outside 2–4, where the growth laws were measured' },
} as const;
