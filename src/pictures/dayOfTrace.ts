import { readColumn, readLedger, type Trace } from '../../shared/trace/trace';

/** One day of a trial, hour by hour. */
export interface DayOfTrace {
  readonly hours: readonly {
    readonly hour: number;
    readonly light: number;
    readonly ph: number;
    /** What corals take in the hour that begins here, dKH of the start volume. */
    readonly uptakeDkh: number;
  }[];
}

/** What a running sum of takings grows by in an hour; its last hour stands for what comes after. */
function inTheHourFrom(taken: Float64Array, hour: number): number {
  const from = Math.min(hour, taken.length - 2);
  return taken[from]! - taken[from + 1]!;
}

/** The last whole day up to the cursor, or the first when there is none. */
export function dayOfTrace(trace: Trace, cursorH: number): DayOfTrace {
  const wholeDays = Math.max(1, Math.floor((trace.rows - 1) / 24));
  const day = Math.min(wholeDays, Math.max(1, Math.ceil(Math.min(cursorH, trace.rows) / 24)));
  const light = readColumn(trace, 'light');
  const ph = readColumn(trace, 'ph_nbs');
  const taken = trace.ledger
    .filter(({ role }) => role === 'growth')
    .map(({ id }) => readLedger(trace, id));
  const from = (day - 1) * 24;
  const count = Math.min(25, trace.rows - from);
  return {
    hours: Array.from({ length: count }, (_, i) => ({
      hour: i,
      light: light[from + i]!,
      ph: ph[from + i]!,
      uptakeDkh: taken.reduce((sum, row) => sum + inTheHourFrom(row, from + i), 0),
    })),
  };
}
