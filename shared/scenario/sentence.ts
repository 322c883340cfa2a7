import { say } from '../words/problems';
import type { Problem } from './problem';

/** A problem in the reader's words. */
export const sentence = ({ path, what, got, expected, wayOut }: Problem): string =>
  say.sentence(path, what, got, expected, wayOut);
