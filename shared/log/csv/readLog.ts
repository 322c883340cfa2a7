import { toFigures } from '../../units/digits';
import * as v from 'valibot';
import { additiveIds, additives } from '../../species/additives';
import { say as csv } from '../../words/csv';
import { figure } from '../../words/figure';
import { testUnit } from '../../units/testUnits';
import { typedNumber } from '../../units/typedNumber';
import { believable } from '../believable';
import { datedDay } from '../spokenTime';
import { readingField, readingSchema, saysSomething, type Reading } from '../reading';
import { ownUnit, type ColumnTarget, type LogColumn } from './columns';
import { readMoment, type DayOrder } from './dates';
import { readNumber, type DecimalMark } from './numbers';
import { wordsOf } from './wordCell';

/** How the cells of a file are to be read. */
export interface Reader {
  readonly columns: readonly LogColumn[];
  readonly decimal: DecimalMark;
  readonly order: DayOrder;
  /** The local time at which it is read: a line of next year is a mistyped one. */
  readonly now: string;
}

export type RowOutcome = { readonly reading: Reading } | { readonly reasons: readonly string[] };

const say = csv.rows;
const { refuse } = say;

/** A number in the unit of its column, turned into the field's own; or why not. */
function numberOf(column: LogColumn, cell: string, decimal: DecimalMark): number | string {
  const own = ownUnit(column.target!)!;
  const { title, quantity } = readingField(column.target as keyof Reading);
  const { digits, unit: named } = typedNumber(cell);
  const typed = readNumber(digits, decimal);
  const unit = testUnit(own, named || (column.unit ?? own));
  if (typed === undefined || (named !== '' && !unit))
    return refuse(title, cell, decimal === '.' ? say.numberWithPoint : say.numberWithComma);
  let value: number;
  try {
    value = toFigures(unit?.toOwn(typed) ?? NaN, 12);
  } catch (error) {
    return say.cannotBe(title, cell, unit?.name ?? own, (error as Error).message);
  }
  const { min, max } = quantity!;
  if (value >= min && value <= max) return unit?.name === own ? typed : value;
  const mistake = quantity!.mistake?.(value);
  return (
    refuse(title, cell, say.range(figure(min), figure(max), own)) + (mistake ? ` ${mistake}.` : '')
  );
}

/** An additive by its name here, its label or its formula. */
function additiveOf(cell: string): string | undefined {
  const wanted = cell.trim().toLowerCase();
  return additiveIds.find((id) =>
    [id, additives[id].label, additives[id].formula].some((name) => name.toLowerCase() === wanted),
  );
}

function valueOf(column: LogColumn, cell: string, decimal: DecimalMark): unknown {
  const target = column.target!;
  if (ownUnit(target) !== undefined) return numberOf(column, cell, decimal);
  if (target === 'additive') return additiveOf(cell) ?? cell;
  return wordsOf(cell);
}

const cellOf = (cells: readonly string[], columns: readonly LogColumn[], target: ColumnTarget) =>
  cells[columns.findIndex((column) => column.target === target)] ?? '';

/** One row of a file as a reading, or every reason why it is none. */
export function readRow(
  cells: readonly string[],
  { columns, decimal, order, now }: Reader,
): RowOutcome {
  if (cells.length > columns.length) {
    return { reasons: [say.tooManyCells(cells.length, columns.length)] };
  }
  const reasons: string[] = [];
  const raw: Record<string, unknown> = {};
  const dateCell = cellOf(cells, columns, 'at') || cellOf(cells, columns, 'date');
  const at = readMoment(dateCell, cellOf(cells, columns, 'timeOfDay'), order);
  if (at === undefined) {
    const clock = cellOf(cells, columns, 'timeOfDay');
    reasons.push(refuse(readingField('at').title, `${dateCell} ${clock}`.trim(), say.realMoment));
  } else {
    const { first, last } = believable(now);
    if (at < first || at > last) {
      const days = say.believable(datedDay(first), datedDay(last));
      reasons.push(refuse(readingField('at').title, dateCell.trim(), days));
    }
    raw.at = at;
  }
  columns.forEach((column, i) => {
    const cell = cells[i] ?? '';
    const { target } = column;
    if (!target || cell.trim() === '' || ['at', 'date', 'timeOfDay'].includes(target)) return;
    const value = valueOf(column, cell, decimal);
    if (ownUnit(target) !== undefined && typeof value === 'string') reasons.push(value);
    else raw[target] = value;
  });
  if (reasons.length > 0) return { reasons };
  const checked = v.safeParse(readingSchema, raw);
  if (!checked.success) {
    return {
      reasons: checked.issues.map((issue) => {
        const name = issue.path?.[0]?.key as keyof Reading;
        return refuse(readingField(name).title, String(issue.input), issue.expected ?? say.another);
      }),
    };
  }
  return saysSomething(checked.output) ? { reading: checked.output } : { reasons: [say.nothing] };
}
