import { toFigures, toDecimals } from '../../../shared/units/digits';
import type { Scenario } from '../../../shared/scenario/schema';

/** What a number that is proposed instead of another is rounded to. */
export const twoDigits = (value: number): number => toFigures(value, 2);

/** Targets on the way from one to the middle of the band that does no harm, to a tenth, in order. */
export function targetsAside(
  targetDkh: number,
  { alkalinityLowDkh, alkalinityHarmDkh, alkalinityHighDkh }: Scenario['limits'],
  shares: readonly number[],
): readonly number[] {
  const middle = (Math.max(alkalinityLowDkh, alkalinityHarmDkh) + alkalinityHighDkh) / 2;
  return shares.map((share) => toDecimals(targetDkh + share * (middle - targetDkh), 1));
}

/** The first of some shares of what the use is known to, nearest first, at which it would do. */
export const knownBetter = (
  giveOrTakeDkhPerDay: number,
  shares: readonly number[],
  does: (giveOrTakeDkhPerDay: number) => boolean,
): number | undefined =>
  shares.map((share) => twoDigits(share * giveOrTakeDkhPerDay)).find((by) => by > 0 && does(by));
