import { toFigures } from '../units/digits';
import { columnIdsOf, readRow, type Trace } from './trace';

/** Enough digits that a file read again gives the chart it came from. */
const DIGITS = 8;

/** A trace as CSV: a unit at the end of every header, one line for each hour. */
export function traceCsv(trace: Trace): string {
  const lines = [columnIdsOf(trace.ledger).join(',')];
  for (let row = 0; row < trace.rows; row++) {
    lines.push(
      readRow(trace, row)
        .map((value) => String(toFigures(value, DIGITS)))
        .join(','),
    );
  }
  return `${lines.join('\n')}\n`;
}
