import { inOrder, readingNames, type Reading } from '../reading';
import { ourHeaders } from './columns';
import { wordCell } from './wordCell';

/** The log as rows of cells, in our own units, with decimal points: it imports back unchanged. */
export const logRows = (readings: readonly Reading[]): string[][] => [
  [...ourHeaders],
  ...inOrder(readings).map((reading) =>
    readingNames.map((name) => wordCell(String(reading[name] ?? ''))),
  ),
];
