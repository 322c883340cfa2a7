import type { ColumnId } from '../../shared/trace/columns';
import type { Trace } from '../../shared/trace/trace';
import { highest, largestDailyChange, lastOf, lowest } from '../../shared/verdict/measures';
import { phText, signed } from '../../shared/verdict/texts';

export interface ComparedResult {
  readonly title: string;
  readonly before: string;
  readonly after: string;
}

const range = (id: ColumnId, text: (value: number) => string) => (trace: Trace) =>
  `${text(lowest(trace, id).value)} to ${text(highest(trace, id).value)}`;

const results: readonly (readonly [string, (trace: Trace) => string])[] = [
  ['Alkalinity, from lowest to highest', range('alkalinity_dkh', (dkh) => dkh.toFixed(2))],
  ['Alkalinity at the end', (trace) => `${lastOf(trace, 'alkalinity_dkh').toFixed(2)} dKH`],
  ['Largest change in a day', (trace) => `${signed(largestDailyChange(trace).value, 2)} dKH`],
  ['pH, from lowest to highest', range('ph_nbs', phText)],
  ['Calcium at the end', (trace) => `${lastOf(trace, 'calcium_mg_l').toFixed(0)} mg/L`],
  ['Salinity at the end', (trace) => `${lastOf(trace, 'salinity_ppt').toFixed(2)} ppt`],
];

/** What two trials come to, side by side; nothing until both have run. */
export const comparedResults = (
  before: Trace | undefined,
  after: Trace | undefined,
): ComparedResult[] =>
  before && after
    ? results.map(([title, text]) => ({ title, before: text(before), after: text(after) }))
    : [];
