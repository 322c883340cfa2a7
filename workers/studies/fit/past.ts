import type { FittedPoint } from './fitted';
import type { Model } from './model';
import type { ReadingError } from './wander';

/** The water as the fit has it, between the readings. */
export interface PastLook {
  readonly timeH: number;
  readonly dkh: number;
  readonly spreadDkh: number;
}

/** The fitted run, moved by what the readings say of it and evenly between them. */
export function pastOf(
  model: Model,
  values: readonly number[],
  points: readonly FittedPoint[],
  errors: readonly ReadingError[],
): PastLook[] {
  const { water, past } = model.course(values);
  const offsets = model.readings(values).map((value, i) => value - water[i]!);
  const known = points.flatMap(({ kind, timeH, expected }, i) =>
    kind === 'alkalinity'
      ? [{ timeH, by: expected - offsets[i]! - water[i]!, spread: Math.sqrt(errors[i]!.variance) }]
      : [],
  );
  return past.map(({ timeH, dkh }) => {
    const after = known.findIndex((point) => point.timeH >= timeH);
    const b = known.at(after < 0 ? -1 : after)!;
    const a = after > 0 ? known[after - 1]! : b;
    const part = a === b ? 0 : (timeH - a.timeH) / (b.timeH - a.timeH || 1);
    const between = (from: number, to: number) => from + part * (to - from);
    return { timeH, dkh: dkh + between(a.by, b.by), spreadDkh: between(a.spread, b.spread) };
  });
}
