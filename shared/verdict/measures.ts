import { isUse, readColumn, readLedger, type LedgerRow, type Trace } from '../trace/trace';
import type { ColumnId } from '../trace/columns';

export interface Extreme {
  readonly value: number;
  readonly timeH: number;
}

function extreme(trace: Trace, id: ColumnId, better: (a: number, b: number) => boolean): Extreme {
  const values = readColumn(trace, id);
  let best = 0;
  for (let i = 1; i < values.length; i++) if (better(values[i]!, values[best]!)) best = i;
  return { value: values[best]!, timeH: readColumn(trace, 'time_h')[best]! };
}

export const highest = (trace: Trace, id: ColumnId): Extreme => extreme(trace, id, (a, b) => a > b);
export const lowest = (trace: Trace, id: ColumnId): Extreme => extreme(trace, id, (a, b) => a < b);

export const lastOf = (trace: Trace, id: ColumnId): number => readColumn(trace, id).at(-1)!;

/** Fresh water that the top-off brought, L a day. */
export const toppedOffLPerDay = (trace: Trace): number =>
  ((lastOf(trace, 'topoff_l') - readColumn(trace, 'topoff_l')[0]!) * 24) /
  Math.max(1, trace.rows - 1);

/** Day of the trial as people count: the first is 1, and midnight ends it. */
export const dayOf = (timeH: number): number => Math.max(1, Math.ceil(timeH / 24 - 1e-9));

/** What a ledger row brought (+) or took (−) between two hours, dKH of the start volume. */
export function ledgerBetween(trace: Trace, row: string, fromH: number, toH: number): number {
  if (!trace.ledger.some(({ id }) => id === row)) return 0;
  const values = readLedger(trace, row);
  const at = (hour: number) => values[Math.min(values.length - 1, Math.round(hour))]!;
  return at(toH) - at(fromH);
}

/** The same of all rows that are asked for, together. */
export const rowsBetween = (
  trace: Trace,
  isAsked: (row: LedgerRow) => boolean,
  fromH: number,
  toH: number,
): number =>
  trace.ledger
    .filter(isAsked)
    .reduce((sum, { id }) => sum + ledgerBetween(trace, id, fromH, toH), 0);

/** Alkalinity that what lives in the tank takes in a day, net, dKH of the start volume. */
export function usePerDay(trace: Trace, fromH: number, toH: number): number {
  const rows = trace.ledger.filter(({ role }) => isUse(role));
  const taken = rows.reduce((sum, { id }) => sum - ledgerBetween(trace, id, fromH, toH), 0);
  return (taken * 24) / Math.max(1, toH - fromH);
}
