import { fixed } from '../../shared/units/digits';
import { say } from '../../shared/words/charts';
import { limitBands, type LimitId } from '../../shared/scenario/limitBands';
import type { Scenario } from '../../shared/scenario/schema';
import { HIGHEST_PH_NBS, type ColumnId } from '../../shared/trace/columns';
import { conversionOf, type DisplayUnits } from '../../shared/units/display';
import { withDecimal } from '../../shared/units/format';
import { phText } from '../say/texts';

/** One chart of the bench: which column, how it is written, the least span worth an axis. */
export interface ChartKind {
  readonly column: ColumnId;
  readonly title: string;
  readonly unit: string;
  readonly least: number;
  readonly limit?: LimitId | 'oxygen';
  /** Beyond this nothing is told but that it is beyond. */
  readonly highest?: number;
  readonly format: (value: number) => string;
}

const digits = (count: number) => (value: number) => fixed(value, count);

/** Those in sight beside the large one. */
export const FIRST = 4;

export const chartKinds: readonly ChartKind[] = [
  {
    column: 'alkalinity_dkh',
    title: say.alkalinity,
    unit: 'dKH',
    least: 1,
    limit: 'alkalinity',
    format: digits(2),
  },
  {
    column: 'ph_nbs',
    title: say.ph,
    unit: 'NBS',
    least: 0.4,
    limit: 'ph',
    highest: HIGHEST_PH_NBS,
    format: phText,
  },
  {
    column: 'calcium_mg_l',
    title: say.calcium,
    unit: 'mg/L',
    least: 20,
    limit: 'calcium',
    format: digits(0),
  },
  {
    column: 'salinity_ppt',
    title: say.salinity,
    unit: 'ppt',
    least: 1,
    limit: 'salinity',
    format: digits(2),
  },
  {
    column: 'temperature_c',
    title: say.temperature,
    unit: '°C',
    least: 1,
    limit: 'temperature',
    format: digits(1),
  },
  {
    column: 'oxygen_mg_l',
    title: say.oxygen,
    unit: 'mg/L',
    least: 1,
    limit: 'oxygen',
    format: digits(1),
  },
  {
    column: 'oxygen_saturation_pct',
    title: say.oxygenSaturation,
    unit: '%',
    least: 10,
    format: digits(0),
  },
  {
    column: 'omega_aragonite',
    title: say.omega,
    unit: '',
    least: 1,
    format: digits(2),
  },
  {
    column: 'dic_umol_kg',
    title: say.dic,
    unit: 'µmol/kg',
    least: 100,
    format: digits(0),
  },
  { column: 'pco2_uatm', title: say.pco2, unit: 'µatm', least: 100, format: digits(0) },
  { column: 'volume_l', title: say.volume, unit: 'L', least: 1, format: digits(2) },
  { column: 'reservoir_l', title: say.reservoir, unit: 'L', least: 1, format: digits(1) },
  { column: 'nitrate_mg_l', title: say.nitrate, unit: 'mg/L', least: 1, format: digits(1) },
];

/** More oxygen than any tank holds, mg/L: the band has no end above. */
const NO_END_MG_PER_L = 100;

/** The keeper's band of a quantity. */
export function bandOf(
  { limit, bound }: ShownKind,
  limits: Scenario['limits'],
): readonly [number, number] | undefined {
  if (limit === 'oxygen') return [bound(limits.oxygenLowMgPerL), bound(NO_END_MG_PER_L)];
  const band = limitBands(limits).find(({ id }) => id === limit);
  return band && [bound(band.low), bound(band.high)];
}

/** A chart in the reader's units: `shown` turns what the trace holds into what is drawn. */
export function inUnits(kind: ChartKind, display: DisplayUnits) {
  const { unit, out, moreDigits } = conversionOf(kind.unit, display);
  const digitsOf = (kind.format(1.23456).split('.')[1] ?? '').length;
  const same = unit === kind.unit;
  // A little beyond, so that it is written as beyond.
  const most = kind.highest === undefined ? undefined : kind.highest + 0.001;
  const told = (values: Float64Array) =>
    most === undefined ? values : values.map((value) => Math.min(value, most));
  return {
    ...kind,
    unit,
    least: same ? kind.least : Math.abs(out(35 + kind.least) - out(35)),
    shown: (values: Float64Array) => (same ? told(values) : told(values).map(out)),
    bound: out,
    format: (value: number) =>
      withDecimal(
        same ? kind.format(value) : fixed(value, Math.max(0, digitsOf + moreDigits)),
        display,
      ),
  };
}

export type ShownKind = ReturnType<typeof inUnits>;
