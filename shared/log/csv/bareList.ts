import { hoursOf, localTimeOf } from '../localTime';

const DKH = String.raw`\d{1,2}(?:[.,]\d{1,2})?`;
const LIST = new RegExp(`^${DKH}(?:(?:\\s*;\\s*|,?\\s+)${DKH})*$`);
/** Cut at commas without a blank, where the fractions have points. */
const CUT = /^\d{1,2}\.\d{1,2}(?:,\d{1,2}\.\d{1,2})+$/;

/** A moment and a number of each value, and the line on which it stands. */
export interface Listed {
  readonly cells: readonly string[];
  readonly line: number;
}

/**
 * "8.4, 8.1, 8.2": values without a day are read as one a day, the last of them now. Undefined for any
 * other text, and for a single number.
 */
export function bareList(text: string, now: string): readonly Listed[] | undefined {
  const found = text.split(/\r\n|\r|\n/).map((typed) => {
    const line = typed.trim();
    if (line === '') return [];
    if (CUT.test(line)) return line.split(',');
    return LIST.test(line) ? line.split(/\s*;\s*|,?\s+/) : undefined;
  });
  if (found.includes(undefined)) return undefined;
  const values = found.flatMap((numbers, i) =>
    numbers!.map((number) => ({ number: number.replace(',', '.'), line: i + 1 })),
  );
  if (values.length < 2) return undefined;
  return values.map(({ number, line }, i) => {
    const at = localTimeOf(hoursOf(now) - 24 * (values.length - 1 - i));
    return { cells: [at.replace('T', ' '), number], line };
  });
}
