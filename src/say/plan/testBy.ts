import { say } from '../../../shared/words/plans';

/** Nobody waits longer than this for the next test: common practice. */
const WEEK_DAYS = 7;

/** What is promised for less than a week is to be tested again within it, whatever else names a day. */
export const testBySentences = (promisedDays: number): string[] =>
  promisedDays < WEEK_DAYS ? [say.offer.testBy(promisedDays)] : [];
