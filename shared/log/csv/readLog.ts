import { checkedReading, type ReadingOutcome } from '../checkedReading';
import { namedBy, readValue } from '../readValue';
import type { ReadingName } from '../reading';
import { ownUnit, type ColumnTarget, type LogColumn } from './columns';
import { readMoment, type DayOrder } from './dates';
import type { DecimalMark } from './numbers';
import { say as csv } from '../../words/csv';
import { wordsOf } from './formula';

/** How the cells of a file are to be read. */
export interface Reader {
  readonly columns: readonly LogColumn[];
  readonly decimal: DecimalMark;
  readonly order: DayOrder;
  /** The local time at which it is read: a line of next year is a mistyped one. */
  readonly now: string;
}

const say = csv.rows;

function valueOf({ target, unit }: LogColumn, cell: string, decimal: DecimalMark): unknown {
  if (ownUnit(target!) !== undefined) return readValue(target as ReadingName, cell, unit, decimal);
  const named = namedBy[target!];
  return named ? (named(cell) ?? cell) : wordsOf(cell);
}

const cellOf = (cells: readonly string[], columns: readonly LogColumn[], target: ColumnTarget) =>
  cells[columns.findIndex((column) => column.target === target)] ?? '';

/** One row of a file as a reading, or every reason why it is none. */
export function readRow(
  cells: readonly string[],
  { columns, decimal, order, now }: Reader,
): ReadingOutcome {
  if (cells.length > columns.length) {
    return { reasons: [say.tooManyCells(cells.length, columns.length)] };
  }
  const reasons: string[] = [];
  const values: Record<string, unknown> = {};
  const dateCell = cellOf(cells, columns, 'at') || cellOf(cells, columns, 'date');
  const clockCell = cellOf(cells, columns, 'timeOfDay');
  const at = readMoment(dateCell, clockCell, order);
  const whenText = (at === undefined ? `${dateCell} ${clockCell}` : dateCell).trim();
  columns.forEach((column, i) => {
    const cell = cells[i] ?? '';
    const { target } = column;
    if (!target || cell.trim() === '' || ['at', 'date', 'timeOfDay'].includes(target)) return;
    const value = valueOf(column, cell, decimal);
    if (ownUnit(target) !== undefined && typeof value === 'string') reasons.push(value);
    else values[target] = value;
  });
  return checkedReading({ at, whenText, values, reasons }, now);
}
