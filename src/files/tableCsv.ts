import { csvText } from './csvText';

/** A cell as the page shows it, with a plain decimal point. */
const plainCell = (text: string): string =>
  text
    .trim()
    .replace(/\s+/gu, ' ')
    .replace(/^−/u, '-')
    .replace(/^([-+]?\d+),(\d+)$/u, '$1.$2');

/** Cells of a page as CSV. */
export const cellsCsv = (rows: readonly (readonly string[])[]): Promise<string> =>
  csvText(
    rows.map((row) => row.map(plainCell)),
    '\r\n',
  );

/** A table of the page as it stands, headings first. */
export const tableCsv = (table: HTMLTableElement): Promise<string> =>
  cellsCsv(
    [...table.rows].map((row) => [...row.cells].map(({ textContent }) => textContent ?? '')),
  );
