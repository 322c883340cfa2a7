import { columns, ledgerColumnId, type ColumnId } from './columns';

/**
 * Why alkalinity moves: corals grow, the rest of what lives takes it, chalk falls out, or it is
 * brought and carried off. A keeper's "use" is growth and life together. Whoever asks for a row
 * asks for its role, so that another kind with the same one is counted by itself.
 */
export type LedgerRole =
  | 'growth'
  | 'life'
  | 'chalk'
  /** What goes in for what evaporates. */
  | 'topOff'
  /** A dosing pump. */
  | 'pump'
  /** Gravel that is dissolved. */
  | 'reactor'
  /** Weighed or poured by the keeper. */
  | 'byHand'
  | 'waterChange'
  /** Tank water that is skimmed off or leaks. */
  | 'lost'
  /** Tank water that runs over the rim. */
  | 'spill'
  /** Carried in or out in any other way. */
  | 'exchange';

export const isUse = (role: LedgerRole): boolean => role === 'growth' || role === 'life';

/** Brought and carried off, in whatever way. */
export const isExchange = (role: LedgerRole): boolean => !isUse(role) && role !== 'chalk';

/** A ledger row. */
export interface LedgerRow {
  readonly id: string;
  /** Its name in the language of the doors, or the keeper's own; a reader is told `rowName`. */
  readonly label: string;
  readonly role: LedgerRole;
  /** Which of the plan's pumps it is, counted from 0. */
  readonly pump?: number;
}

/** The moment at which a quantity left or entered the keeper's band. */
export interface Crossing {
  readonly limit: string;
  readonly timeH: number;
  readonly into: 'outside' | 'inside';
}

/** Hourly rows of one trial, column after column in one buffer. */
export interface Trace {
  readonly rows: number;
  readonly capacity: number;
  readonly ledger: readonly LedgerRow[];
  readonly buffer: ArrayBuffer;
}

export const columnIdsOf = (ledger: readonly LedgerRow[]): string[] => [
  ...columns.map(({ id }) => id),
  ...ledger.map(({ id }) => ledgerColumnId(id)),
];

export const createTrace = (capacity: number, ledger: readonly LedgerRow[]): Trace => ({
  rows: 0,
  capacity,
  ledger,
  buffer: new ArrayBuffer(8 * capacity * columnIdsOf(ledger).length),
});

function columnAt(trace: Trace, index: number): Float64Array {
  return new Float64Array(trace.buffer, 8 * trace.capacity * index, trace.rows);
}

/** One column of a trace, without copying. */
export function readColumn(trace: Trace, id: ColumnId): Float64Array {
  return columnAt(
    trace,
    columns.findIndex((column) => column.id === id),
  );
}

/** What one ledger row has brought since the start, dKH of the start volume. */
export function readLedger(trace: Trace, row: string): Float64Array {
  const index = trace.ledger.findIndex(({ id }) => id === row);
  if (index < 0) throw new RangeError(`This trace has no ledger row '${row}'.`);
  return columnAt(trace, columns.length + index);
}

/** All columns at one row. */
export const readRow = (trace: Trace, row: number): number[] =>
  columnIdsOf(trace.ledger).map((_, index) => columnAt(trace, index)[row]!);
