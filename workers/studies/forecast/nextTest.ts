import type { Fit } from '../fit/fit';
import type { Parameter } from '../fit/parameters';
import { varianceOf } from '../fit/leastSquares';
import type { Fan } from './fan';

/** Today's consumption, by growth since the log began. */
export interface UseNow {
  readonly dkhPerDay: number;
  readonly standardErrorDkhPerDay: number;
}

/** How to know the consumption to ± what was asked, at two standard errors. */
export interface NextTest {
  readonly withinDkhPerDay: number;
  /** Known so well already. */
  readonly known: boolean;
  /** Days from now after which one more test is enough. */
  readonly onceInDays: number | undefined;
  /** As many tests, one a day, are enough. */
  readonly dailyTests: number | undefined;
}

const K = 2;
type Square = readonly (readonly number[])[];

/** How today's consumption moves with the fitted numbers; branching growth, to first order. */
function slopesOfUse({ estimates, endH }: Fit): { now: number; slopes: number[] } {
  const of = (id: string) => estimates.find((estimate) => estimate.id === id)!.value;
  const days = endH / 24;
  const grown = Math.exp((of('growth') / 100) * days);
  const now = of('use') * grown;
  const slope: Record<string, number> = { use: grown, growth: (now * days) / 100 };
  return { now, slopes: estimates.map(({ id }) => slope[id] ?? 0) };
}

export function useNow(fit: Fit): UseNow {
  const { now, slopes } = slopesOfUse(fit);
  return { dkhPerDay: now, standardErrorDkhPerDay: Math.sqrt(varianceOf(slopes, fit.covariance)) };
}

/** The covariance once one more test has been read: a row j with noise σ. */
function withTest(covariance: Square, row: readonly number[], sigma: number): Square {
  const carried = covariance.map((line) => line.reduce((sum, c, i) => sum + c * row[i]!, 0));
  const total = sigma ** 2 + varianceOf(row, covariance);
  return covariance.map((line, i) => line.map((c, k) => c - (carried[i]! * carried[k]!) / total));
}

export function nextTest(
  fit: Fit,
  { timesH, slopes }: Fan,
  parameters: readonly Parameter[],
  sigmaDkh: number,
  withinDkhPerDay: number,
): NextTest {
  const lastLot = Math.max(0, ...parameters.map(({ lot }) => lot ?? 0));
  const { slopes: ofUse } = slopesOfUse(fit);
  const enough = (covariance: Square) =>
    K * Math.sqrt(varianceOf(ofUse, covariance)) <= withinDkhPerDay;
  const ahead = timesH.flatMap((timeH, k) => {
    const row = slopes[k]!.map((slope, i) => (parameters[i]!.lot === lastLot ? 1 : slope));
    return timeH > fit.endH ? [{ days: (timeH - fit.endH) / 24, row }] : [];
  });
  const once = ahead.find(({ row }) => enough(withTest(fit.covariance, row, sigmaDkh)));
  let covariance: Square = fit.covariance;
  let dailyTests: number | undefined;
  for (let day = 1; day <= (ahead.at(-1)?.days ?? 0); day++) {
    const { row } = ahead.find(({ days }) => days >= day)!;
    covariance = withTest(covariance, row, sigmaDkh);
    if (!enough(covariance)) continue;
    dailyTests = day;
    break;
  }
  const known = enough(fit.covariance);
  return { withinDkhPerDay, known, onceInDays: once?.days, dailyTests };
}
