import { readingNames, type Reading } from '../../shared/log/reading';

/** A reading as one text: two that say the same of the same moment are one. */
export const said = (reading: Reading): string =>
  JSON.stringify(readingNames.map((name) => reading[name] ?? null));
