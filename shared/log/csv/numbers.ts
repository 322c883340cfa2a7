import { typedNumber } from '../../units/typedNumber';

/** How a file writes fractions; undefined when its numbers leave it open. */
export type DecimalMark = '.' | ',';

const PLAIN = /^[-+−]?\d*[.,]?\d+$/;
/** Groups of three: a thousand in one country, one in another. */
const AMBIGUOUS = /^[-+−]?[1-9]\d{0,2}[.,]\d{3}$/;

/** What a cell alone says of the mark: "8,25" a comma, "8.25" a point, "1,285" nothing. */
function evidence(cell: string): DecimalMark | undefined {
  const text = typedNumber(cell).digits;
  if (/^[-+−]?\d{1,3}(,\d{3})+\.\d+$/.test(text)) return '.';
  if (/^[-+−]?\d{1,3}(\.\d{3})+,\d+$/.test(text)) return ',';
  if (!PLAIN.test(text) || AMBIGUOUS.test(text)) return undefined;
  return text.includes(',') ? ',' : text.includes('.') ? '.' : undefined;
}

/** The mark that the numbers of a file use; undefined when they do not tell, or contradict. */
export function decimalMark(cells: readonly string[]): DecimalMark | undefined {
  const seen = new Set(cells.map(evidence));
  seen.delete(undefined);
  return seen.size === 1 ? [...seen][0] : undefined;
}

/** Whether a file without a clear mark has a number that depends on it. */
export const dependsOnMark = (cell: string): boolean => /[.,]/.test(cell);

/** A number written with that mark, or nothing. */
export function readNumber(cell: string, mark: DecimalMark): number | undefined {
  const other = mark === '.' ? ',' : '.';
  const text = cell.trim().replace('−', '-');
  const grouped = new RegExp(`^[-+]?\\d{1,3}(\\${other}\\d{3})+(\\${mark}\\d+)?$`);
  const bare = grouped.test(text) ? text.replaceAll(other, '') : text;
  const plain = bare.replace(mark, '.');
  return /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/.test(plain) ? Number(plain) : undefined;
}
