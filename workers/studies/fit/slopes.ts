import type { Square } from './leastSquares';
import type { Model } from './model';

/** How readings, and the level and the use at the end, move with each fitted number. */
export interface Slopes {
  readonly rows: Square;
  readonly endDkh: readonly number[];
  readonly use: readonly number[];
}

/** Difference quotients about the given values, taken inwards at a bound. */
export function slopesAt(model: Model, values: readonly number[]): Slopes {
  const here = { readings: model.readings(values), ...model.course(values) };
  const columns = model.parameters.map(({ step, max }, i) => {
    const by = values[i]! + step > max ? -step : step;
    const aside = values.with(i, values[i]! + by);
    const there = { readings: model.readings(aside), ...model.course(aside) };
    return {
      readings: there.readings.map((value, k) => (value - here.readings[k]!) / by),
      endDkh: (there.endDkh - here.endDkh) / by,
      use: (there.useDkhPerDay - here.useDkhPerDay) / by,
    };
  });
  return {
    rows: here.readings.map((_, k) => columns.map(({ readings }) => readings[k]!)),
    endDkh: columns.map(({ endDkh }) => endDkh),
    use: columns.map(({ use }) => use),
  };
}

/** a·b over the length of a: what moves with the fitted numbers alone. */
export const sumOf = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);
