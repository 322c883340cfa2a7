import { ourHeaders } from './columns';
import type { CsvRows } from './importLog';

/** "2026-03-01 8.4", "1.3.2026 10:30; 8,4 dKH": a day, perhaps a time, and one number. */
const DAY_AND_NUMBER =
  /^(\d[\d./-]*\d\.?)(?:[T ,;]+(\d{1,2}[:.h]\d{2}(?: ?[ap]\.?m\.?)?))?[\s,;]+(\d+(?:[.,]\d+)?)(?: ?d?KH)?$/i;

/** Lines of a day and an alkalinity without a header, as rows under one of ours; undefined for any other text. */
export function pastedRows(text: string): CsvRows | undefined {
  const lines = text.split(/\r\n|\r|\n/).map((line) => line.trim());
  const found = lines.map((line) => (line === '' ? [] : DAY_AND_NUMBER.exec(line)));
  if (found.some((match) => match === null) || lines.every((line) => line === '')) return undefined;
  return [
    ourHeaders.slice(0, 2),
    ...found.map((match) => {
      const [, day = '', clock = '', number = ''] = match!;
      return [`${day} ${clock}`.trim(), number];
    }),
  ];
}
