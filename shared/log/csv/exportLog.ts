import { inOrder, readingNames, type Reading } from '../reading';
import { ourHeaders } from './columns';
import { wordCell } from './wordCell';

/** A number is no formula, whatever its sign. */
const cellText = (value: string | number): string =>
  typeof value === 'number' ? String(value) : wordCell(value);

/** The log as rows of cells, in our own units, with decimal points: it imports back unchanged. */
export const logRows = (readings: readonly Reading[]): string[][] => [
  [...ourHeaders],
  ...inOrder(readings).map((reading) => readingNames.map((name) => cellText(reading[name] ?? ''))),
];
