/** What a forecast expects, as arrays over hours. */
interface Expected {
  readonly timesH: readonly number[];
  readonly dkh: readonly number[];
  readonly spreadDkh: readonly number[];
}

/** A reading held against a forecast that did not know it. */
export interface Judgement {
  readonly expectedDkh: number;
  /** Two standard errors of a reading: forecast and test together, dKH. */
  readonly giveOrTakeDkh: number;
  /** Standard errors that the reading lies off. */
  readonly standardised: number;
}

/** Between two hours of the forecast, by a straight line; nothing outside of it. */
function between(timesH: readonly number[], values: readonly number[], timeH: number) {
  const k = timesH.findIndex((t) => t >= timeH);
  if (k < 0) return undefined;
  if (k === 0) return values[0];
  const part = (timeH - timesH[k - 1]!) / (timesH[k]! - timesH[k - 1]!);
  return values[k - 1]! + part * (values[k]! - values[k - 1]!);
}

/** Undefined when the forecast does not reach that moment. */
export function judge(
  dkh: number,
  sigmaDkh: number,
  timeH: number,
  forecast: Expected,
): Judgement | undefined {
  const expectedDkh = between(forecast.timesH, forecast.dkh, timeH);
  const spread = between(forecast.timesH, forecast.spreadDkh, timeH);
  if (expectedDkh === undefined || spread === undefined) return undefined;
  const standardError = Math.hypot(spread, sigmaDkh);
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
