import { readingField, type ReadingName } from '../reading';
import { ownUnit, readHeader, type LogColumn } from './columns';
import { readMoment } from './dates';
import type { CsvRows } from './importLog';

const WHOLE = /^\s*[-+−]?\d+\s*$/;
const POINTED = /^\s*[-+−]?\d*\.\d+\s*$/;
const FRACTION = /^\d+(?:\s*[\p{L}°‰%µ].*)?\s*$/u;

/** The ways to take so many numbers of a row together with the cell after each. */
function* choices(columns: readonly number[], count: number): Generator<readonly number[]> {
  if (count === 0) yield [];
  else {
    for (const [i, column] of columns.entries()) {
      for (const rest of choices(columns.slice(i + 1), count - 1)) yield [column, ...rest];
    }
  }
}

/** The cells with some columns' fractions taken back into them; undefined where one is no number. */
function joined(cells: readonly string[], split: readonly number[]): string[] | undefined {
  const own: string[] = [];
  for (let [from, column] = [0, 0]; from < cells.length; column++) {
    if (!split.includes(column)) {
      own.push(cells[from++]!);
      continue;
    }
    const [whole = '', fraction = ''] = [cells[from], cells[from + 1]];
    if (!WHOLE.test(whole) || !FRACTION.test(fraction)) return undefined;
    own.push(`${whole.trim()},${fraction}`);
    from += 2;
  }
  return own;
}

/** What tanks hold, in the field's own unit: a number that lies outside was put together wrongly. */
const LIKELY_IN: Partial<Record<string, readonly [number, number]>> = {
  alkalinityDkh: [3, 20],
  calciumMgPerL: [250, 700],
  magnesiumMgPerL: [700, 2000],
  salinityPractical: [20, 42],
  phNbs: [7, 9],
  tempC: [18, 32],
};

function isLikely({ target, unit }: LogColumn, cell: string): boolean {
  if (cell.trim() === '' || target === undefined) return true;
  const own = ownUnit(target);
  // In another unit a number may lie anywhere.
  if (unit !== undefined && unit !== own) return true;
  const number = Number(
    cell
      .trim()
      .replace(',', '.')
      .replace(/[^\d.-].*$/, ''),
  );
  const { min, max } = readingField(target as ReadingName).quantity!;
  const [low, high] = LIKELY_IN[target] ?? [min, max];
  return number >= low && number <= high;
}

/**
 * A table cut at commas whose numbers have decimal commas, too ("17.10.2026,8,6"): a row with more
 * cells than headers is put together again where one way alone gives numbers that can be; else it is
 * left as it is, to be refused with its line.
 */
function rejoined([header = [], ...rows]: CsvRows): CsvRows {
  const columns = header.map((text) => readHeader(text));
  // What is in a column that nobody knows may be a number, too.
  const numbers = columns.flatMap(({ target }, i) =>
    target === undefined || ownUnit(target) !== undefined ? [i] : [],
  );
  return [
    header,
    ...rows.map((row) => {
      const more = row.length - header.length;
      // A row with a decimal point has no decimal commas.
      if (more <= 0 || more > numbers.length || row.some((cell) => POINTED.test(cell))) return row;
      const ways = [...choices(numbers, more)].flatMap((split) => {
        const cells = joined(row, split);
        return cells && numbers.every((i) => isLikely(columns[i]!, cells[i]!)) ? [cells] : [];
      });
      return ways.length === 1 ? ways[0]! : row;
    }),
  ];
}

/** Rows under a header, and on which line it stands: 0 where it is ours. */
export interface Table {
  readonly rows: CsvRows;
  readonly headerLine: number;
}

/** What a column without a header most likely holds, by the middle of its numbers. */
const LIKELY: readonly (readonly [header: string, low: number, high: number])[] = [
  ['salinity (SG)', 1.015, 1.035],
  ['alkalinity (dKH)', 4, 16],
  ['salinity (ppt)', 28, 40],
  ['calcium (mg/L)', 300, 600],
  ['magnesium (mg/L)', 900, 1800],
];

function middleOf(cells: readonly string[]): number | undefined {
  const numbers = cells
    .map((cell) => Number(cell.trim().replace(',', '.')))
    .filter((number) => Number.isFinite(number) && number !== 0)
    .toSorted((a, b) => a - b);
  return numbers[Math.floor(numbers.length / 2)];
}

/** A table whose first line is a test already gets headers, so that no line is taken for one. */
function headed(rows: CsvRows): Table {
  const [first = []] = rows;
  const isDay = (cell: string) => /\d/.test(cell) && readMoment(cell, '', 'dmy') !== undefined;
  const at = first.findIndex(isDay);
  if (at < 0) return { rows, headerLine: 1 };
  const taken = new Set<string>();
  const header = first.map((_, i) => {
    if (i === at) return 'when';
    const middle = middleOf(rows.map((row) => row[i] ?? ''));
    const likely = LIKELY.find(
      ([name, low, high]) =>
        middle !== undefined && middle >= low && middle <= high && !taken.has(name),
    );
    if (!likely) return '';
    taken.add(likely[0]);
    return likely[0];
  });
  return { rows: [header, ...rows], headerLine: 0 };
}

/**
 * A text's cells as a table: with headers, and no number cut apart at its own comma. Undefined where the
 * first line has digits and is no header, nor a test: nothing of it would be read as one.
 */
export function tableOf(cells: CsvRows): Table | undefined {
  const { rows, headerLine } = headed(cells);
  const header = rows[0] ?? [];
  const says = header.some((cell) => readHeader(cell).target !== undefined);
  if (!says && header.some((cell) => /\d/.test(cell))) return undefined;
  return { rows: rejoined(rows), headerLine };
}
