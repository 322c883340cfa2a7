import { wordCell } from '../../shared/log/csv/wordCell';

const isNumber = (cell: string) => /^[-+]?\d+(\.\d+)?$/.test(cell);

/** One cell; words that a spreadsheet would take for a formula are marked as words. */
function cellCsv(text: string): string {
  const cell = text
    .trim()
    .replace(/\s+/gu, ' ')
    .replace(/^−/u, '-')
    .replace(/^([-+]?\d+),(\d+)$/u, '$1.$2');
  if (isNumber(cell)) return cell;
  const words = wordCell(cell);
  return /[",\n]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words;
}

/** Rows of cells as CSV after RFC 4180, with a plain decimal point. */
export const rowsCsv = (rows: readonly (readonly string[])[]): string =>
  `${rows.map((row) => row.map(cellCsv).join(',')).join('\r\n')}\r\n`;

/** A table of the page as it stands, headings first. */
export const tableCsv = (table: HTMLTableElement): string =>
  rowsCsv([...table.rows].map((row) => [...row.cells].map(({ textContent }) => textContent ?? '')));
