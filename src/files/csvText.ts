import { FORMULA } from '../../shared/log/csv/formula';

/**
 * Rows of cells as CSV after RFC 4180; words that a spreadsheet would run are marked as words. The
 * writer is fetched when first needed.
 */
export async function csvText(
  rows: readonly (readonly (string | number)[])[],
  newline: '\n' | '\r\n' = '\n',
): Promise<string> {
  const { default: Papa } = await import('papaparse');
  const text = Papa.unparse(rows as (string | number)[][], { newline, escapeFormulae: FORMULA });
  return `${text}${newline}`;
}
