import { inOrder, readingNames, type Reading } from '../reading';
import { ourHeaders } from './columns';

/** The log as rows of cells, in our own units, with decimal points: it imports back unchanged. */
export const logRows = (readings: readonly Reading[]): (string | number)[][] => [
  [...ourHeaders],
  ...inOrder(readings).map((reading) => readingNames.map((name) => reading[name] ?? '')),
];
