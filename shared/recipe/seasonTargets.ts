import type { Scenario } from '../scenario/schema';

/** Where the keeper wants calcium and magnesium, mg/L. */
export interface SeasonTargets {
  readonly calcium: number;
  readonly magnesium: number;
}

/** What was asked for where that lies inside the keeper's bands, else their middle. */
export function targetsWithin(
  { limits }: Pick<Scenario, 'limits'>,
  { calcium, magnesium }: SeasonTargets,
): SeasonTargets {
  const middle = usualTargets({ limits });
  const isIn = (value: number, low: number, high: number) => value >= low && value <= high;
  return {
    calcium: isIn(calcium, limits.calciumLowMgPerL, limits.calciumHighMgPerL)
      ? calcium
      : middle.calcium,
    magnesium: isIn(magnesium, limits.magnesiumLowMgPerL, limits.magnesiumHighMgPerL)
      ? magnesium
      : middle.magnesium,
  };
}

/** The middle of the keeper's bands. */
export const usualTargets = ({ limits }: Pick<Scenario, 'limits'>): SeasonTargets => ({
  calcium: (limits.calciumLowMgPerL + limits.calciumHighMgPerL) / 2,
  magnesium: (limits.magnesiumLowMgPerL + limits.magnesiumHighMgPerL) / 2,
});
