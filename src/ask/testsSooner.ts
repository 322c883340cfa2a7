import type { LogAnswer } from './outcome';

type Told = Pick<LogAnswer, 'fit'>;

/** A reading so many standard errors off is no noise. */
const STRAY = 3;
/** A level that is known no better is none to turn anything by, dKH at two standard errors. */
const TORN_DKH = 0.6;
const DAY_H = 24;

export const levelBy = ({ fit }: Told): number => 2 * Math.sqrt(fit.now.covariance[0]![0]!);

const newestOf = ({ fit }: Told) => fit.points.findLast(({ kind }) => kind === 'alkalinity');

/** The newest reading of alkalinity, where it lies far from what the others lead to, dKH. */
export function strayDkh(told: Told): number | undefined {
  const newest = newestOf(told);
  return newest && Math.abs(newest.standardised) > STRAY ? newest.value : undefined;
}

/** Whether it is open where the water stands: the same water is tested again first. */
export const isTorn = (told: Told): boolean =>
  strayDkh(told) !== undefined || levelBy(told) > TORN_DKH;

/** In how many days a test is wanted whatever the use is known to; undefined where nothing presses. */
export function soonerDays(told: Pick<LogAnswer, 'fit' | 'now'>): 0 | 1 | undefined {
  const newest = newestOf(told);
  if (!newest) return undefined;
  // A level that is lost because nobody has tested for days is a test that is due, and no quarrel.
  const isFresh = told.fit.endH - newest.timeH < DAY_H;
  if (isFresh && isTorn(told)) return 0;
  const { alkalinityLowDkh, alkalinityHighDkh } = told.now.limits;
  return newest.value < alkalinityLowDkh || newest.value > alkalinityHighDkh ? 1 : undefined;
}
