import type { CsvRows } from '../../../shared/log/csv/importLog';

/** The cells of a CSV text, whatever separates and quotes them; the reader is fetched when first needed. */
export async function csvRows(text: string): Promise<CsvRows> {
  const { default: Papa } = await import('papaparse');
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
    delimitersToGuess: [',', ';', '\t', '|'],
  });
  // What follows the last line's end is no row.
  return data.at(-1)?.length === 1 && data.at(-1)![0] === '' ? data.slice(0, -1) : data;
}
