import type { LotOffset } from './lotOffset';

/** What a forecast expects, as arrays over hours. */
interface Expected {
  readonly timesH: readonly number[];
  readonly dkh: readonly number[];
  readonly spreadDkh: readonly number[];
  /** When something is poured in or changed at once. */
  readonly suddenH: readonly number[];
}

/** A reading held against a forecast that did not know it. */
export interface Judgement {
  readonly expectedDkh: number;
  /** Two standard errors of a reading: forecast and test together, dKH. */
  readonly giveOrTakeDkh: number;
  /** Standard errors that the reading lies off. */
  readonly standardised: number;
}

/** Between two hours of the forecast, by a straight line; undefined outside of it. */
function between(timesH: readonly number[], values: readonly number[], timeH: number) {
  const k = timesH.findIndex((t) => t >= timeH);
  if (k < 0) return undefined;
  if (k === 0) return values[0];
  const part = (timeH - timesH[k - 1]!) / (timesH[k]! - timesH[k - 1]!);
  return values[k - 1]! + part * (values[k]! - values[k - 1]!);
}

/**
 * What is expected at a moment. Where a dose falls between two hours the water jumps: before it, and
 * at its very minute, the water of the hour before goes on; after it, that of the hour after counts.
 */
function expectedAt({ timesH, dkh, suddenH }: Expected, timeH: number): number | undefined {
  const k = timesH.findIndex((t) => t >= timeH);
  const jumps = (i: number) => suddenH.filter((at) => at > timesH[i - 1]! && at <= timesH[i]!);
  const here = k > 0 ? jumps(k) : [];
  if (here.length === 0) return between(timesH, dkh, timeH);
  const isAfter = timeH > Math.max(...here);
  const [from, beside] = isAfter ? [k, k + 1] : [k - 1, k - 2];
  const next = Math.max(from, beside);
  const isEven = timesH[beside] !== undefined && jumps(next).length === 0;
  const perH = isEven ? (dkh[beside]! - dkh[from]!) / (timesH[beside]! - timesH[from]!) : 0;
  return dkh[from]! + perH * (timeH - timesH[from]!);
}

/** What is known of a reading besides its number. */
interface Read {
  readonly dkh: number;
  /** One σ of the test, dKH. */
  readonly sigmaDkh: number;
  readonly timeH: number;
  /** How its bottle reads. */
  readonly lot: LotOffset;
}

/** Undefined when the forecast does not reach that moment. */
export function judge(
  { dkh, sigmaDkh, timeH, lot }: Read,
  forecast: Expected,
): Judgement | undefined {
  const waterDkh = expectedAt(forecast, timeH);
  const spread = between(forecast.timesH, forecast.spreadDkh, timeH);
  if (waterDkh === undefined || spread === undefined) return undefined;
  const expectedDkh = waterDkh + lot.byDkh;
  const standardError = Math.hypot(spread, sigmaDkh, lot.sigmaDkh);
  const standardised = (dkh - expectedDkh) / standardError;
  return { expectedDkh, giveOrTakeDkh: 2 * standardError, standardised };
}

/**
 * Whether readings, the latest last, stray too often on one side: two of three beyond 2 standard
 * errors, or four of five beyond 1 (Western Electric 1956, Statistical Quality Control Handbook,
 * from memory). One in about a hundred sound forecasts is accused by chance.
 */
export function strays(standardised: readonly number[]): boolean {
  const beyond = (last: number, limit: number, least: number) =>
    [1, -1].some(
      (side) => standardised.slice(-last).filter((z) => z * side > limit).length >= least,
    );
  return beyond(3, 2, 2) || beyond(5, 1, 4);
}
