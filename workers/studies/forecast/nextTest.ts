import { varianceOf, type Square } from '../fit/leastSquares';
import type { Fit } from '../fit/fitted';
import type { Ahead } from './fan';
import type { Leaving } from './leaving';

/** Why a test is due. */
export type TestReason =
  /** With it the consumption is known as well as was asked. */
  | 'known'
  /** By then one in ten of the fits that the log allows has left the band. */
  | 'leaving'
  /** Neither comes within a week: common practice. */
  | 'weekly';

/** When to test next, and what daily tests would bring. */
export interface NextTest {
  readonly withinDkhPerDay: number;
  readonly alreadyKnown: boolean;
  /** When the newest test was read, h from the log's start: a dose or a change after it tests nothing. */
  readonly testedAtH: number;
  /** From the log's end; less than 0 where the test was due before its last line. */
  readonly inDays: number;
  readonly reason: TestReason;
  /** As many tests, one a day, make the consumption known; undefined where four weeks do not. */
  readonly dailyTests: number | undefined;
}

const K = 2;
const WEEK_DAYS = 7;
/** A test sooner than this after the newest is at another hour of the day, and tells the same water again. */
const LEAST_DAYS = 1;
/** Where use stands among level, use and growth. */
const USE = 1;

/** The covariance once one more test has been read: a row j with noise σ². */
function withTest(covariance: Square, row: readonly number[], variance: number): Square {
  const carried = covariance.map((line) => line.reduce((sum, c, i) => sum + c * row[i]!, 0));
  const total = variance + varianceOf(row, covariance);
  return covariance.map((line, i) => line.map((c, k) => c - (carried[i]! * carried[k]!) / total));
}

/** The earlier of knowing enough and one in ten odds of leaving; a week from the newest test when neither comes. */
export function nextTest(
  { now: { covariance }, points, endH }: Pick<Fit, 'now' | 'points' | 'endH'>,
  { timesH, slopes, spreadDkh }: Ahead,
  leaving: Leaving | undefined,
  sigmaDkh: number,
  withinDkhPerDay: number,
): NextTest {
  const testedAtH = points.findLast(({ kind }) => kind === 'alkalinity')!.timeH;
  const daysAgo = (endH - testedAtH) / 24;
  const leastDays = LEAST_DAYS - daysAgo;
  const enough = (c: Square) => K * Math.sqrt(c[USE]![USE]!) <= withinDkhPerDay;
  const ahead = timesH.map((timeH, k) => {
    const wandered = Math.max(0, spreadDkh[k]! ** 2 - varianceOf(slopes[k]!, covariance));
    return { days: timeH / 24, row: slopes[k]!, variance: sigmaDkh ** 2 + wandered };
  });
  const alreadyKnown = enough(covariance);
  const once = ahead.find(
    ({ days, row, variance }) => days >= leastDays && enough(withTest(covariance, row, variance)),
  );
  let known = covariance;
  let dailyTests: number | undefined;
  for (let day = 1; day <= (ahead.at(-1)?.days ?? 0) && dailyTests === undefined; day++) {
    const { row, variance } = ahead.find(({ days }) => days >= day)!;
    known = withTest(known, row, variance);
    if (enough(known)) dailyTests = day;
  }
  const leavesInDays = leaving?.oneInTenH === undefined ? Infinity : leaving.oneInTenH / 24;
  const knownInDays = alreadyKnown ? Infinity : (once?.days ?? Infinity);
  const weekInDays = WEEK_DAYS - daysAgo;
  const inDays = Math.min(weekInDays, knownInDays, Math.max(leastDays, leavesInDays));
  const reason = inDays === knownInDays ? 'known' : inDays < weekInDays ? 'leaving' : 'weekly';
  return { withinDkhPerDay, alreadyKnown, testedAtH, inDays, reason, dailyTests };
}
