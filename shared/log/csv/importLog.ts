import { say } from '../../words/csv';
import { sameReading, type Reading } from '../reading';
import { needsUnit, ownUnit, readHeader, type LogColumn } from './columns';
import { dayOrder, dependsOnOrder, type DayOrder } from './dates';
import { decimalMark, dependsOnMark, type DecimalMark } from './numbers';
import { readRow } from './readLog';

/** A file as rows of cells, its header first. */
export type CsvRows = readonly (readonly string[])[];

/** How a file reads, as far as it tells; what is undefined must be asked. */
export interface Understanding {
  readonly columns: readonly LogColumn[];
  readonly decimal: DecimalMark | undefined;
  readonly order: DayOrder | undefined;
}

/** One row that is not taken, and why. */
export interface Refused {
  readonly line: number;
  readonly reasons: readonly string[];
  readonly duplicate: boolean;
}

/** What an import would do; nothing is taken yet. */
export interface Preview {
  readonly taken: readonly Reading[];
  readonly refused: readonly Refused[];
  readonly emptyLines: number;
}

const isEmpty = (row: readonly string[]) => row.every((cell) => cell.trim() === '');

/** Looks at the header and at every cell to see how the file is written. */
export function understand([header = [], ...rows]: CsvRows): Understanding {
  const columns = withMoment(unique(header.map((text) => readHeader(text.replace(/^\uFEFF/, '')))));
  const cellsOf = (wanted: (column: LogColumn) => boolean) =>
    rows.flatMap((row) => row.filter((_, i) => columns[i] !== undefined && wanted(columns[i])));
  const dates = cellsOf(({ target }) => target === 'at' || target === 'date');
  // Also where the unit is still to be asked: what is answered does not change how it is written.
  const numbers = cellsOf(({ target }) => target !== undefined && ownUnit(target) !== undefined);
  const decimal = decimalMark(numbers) ?? (numbers.some(dependsOnMark) ? undefined : '.');
  const order = dayOrder(dates) ?? (dates.some(dependsOnOrder) ? undefined : 'dmy');
  return { columns, decimal, order };
}

/** The first column of a kind is read; another of the same kind is left to the keeper. */
const unique = (columns: readonly LogColumn[]): LogColumn[] =>
  columns.map((column, i) =>
    columns.findIndex(({ target }) => target === column.target) === i
      ? column
      : { ...column, target: undefined },
  );

/** A column called "time" in a file without a date holds both. */
const withMoment = (columns: readonly LogColumn[]): readonly LogColumn[] =>
  columns.some(({ target }) => target === 'at' || target === 'date')
    ? columns
    : columns.map((column) =>
        column.target === 'timeOfDay' ? { ...column, target: 'at' } : column,
      );

/** What still has to be asked before the file can be read, in words. */
export function questions({ columns, decimal, order }: Understanding): string[] {
  const has = (...targets: string[]) =>
    columns.some(({ target }) => targets.includes(target ?? ''));
  return [
    ...(has('at', 'date') ? [] : [say.asks.when]),
    ...columns.filter(needsUnit).map(({ header }) => say.asks.unit(header)),
    ...(decimal ? [] : [say.asks.decimal]),
    ...(order ? [] : [say.asks.order]),
  ];
}

/** The lines of the file on which its rows begin: a cell in quotes may run over several. */
function linesOf(rows: CsvRows, headerLine: number): number[] {
  let line = headerLine;
  return rows.map((row) => {
    const begins = line;
    line += 1 + row.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return begins;
  });
}

/**
 * Every row accounted for: taken, refused with line and reason, or empty. `from` is the line of the
 * header, 0 where it is ours and on no line; or, where a line may hold several rows, that of each row.
 */
export function previewImport(
  rows: CsvRows,
  { columns, decimal, order }: Understanding,
  known: readonly Reading[],
  now: string,
  from: number | readonly number[] = 1,
): Preview {
  const lines = typeof from === 'number' ? linesOf(rows, from) : [0, ...from];
  const taken: Reading[] = [];
  const refused: Refused[] = [];
  let emptyLines = 0;
  const seen = new Map<string, { reading: Reading; why: string }[]>();
  const remember = (reading: Reading, why: string) =>
    seen.set(reading.at, [...(seen.get(reading.at) ?? []), { reading, why }]);
  for (const reading of known) remember(reading, say.rows.sameInLog);
  rows.slice(1).forEach((row, i) => {
    const line = lines[i + 1]!;
    if (isEmpty(row)) {
      emptyLines++;
      return;
    }
    const outcome = readRow(row, {
      ...{ columns, now },
      ...{ decimal: decimal ?? '.', order: order ?? 'dmy' },
    });
    if ('reasons' in outcome) {
      refused.push({ line, reasons: outcome.reasons, duplicate: false });
      return;
    }
    const { reading } = outcome;
    const twin = seen.get(reading.at)?.find((other) => sameReading(other.reading, reading));
    if (twin) refused.push({ line, reasons: [twin.why], duplicate: true });
    else {
      taken.push(reading);
      remember(reading, say.rows.sameOnLine(line));
    }
  });
  return { taken, refused, emptyLines };
}
