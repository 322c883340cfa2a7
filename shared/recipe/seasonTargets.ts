import type { Scenario } from '../scenario/schema';

/** May be moved in a day, mg/L and ppt: common practice, each the keeper's to change. */
export interface MostPerDay {
  readonly calcium: number;
  readonly magnesium: number;
  readonly salinity: number;
}
export const usualMostPerDay: MostPerDay = { calcium: 20, magnesium: 50, salinity: 1 };

/** Where the keeper wants calcium and magnesium, mg/L. */
export interface SeasonTargets {
  readonly calcium: number;
  readonly magnesium: number;
}

/** The middle of the keeper's bands. */
export const usualTargets = ({ limits }: Pick<Scenario, 'limits'>): SeasonTargets => ({
  calcium: (limits.calciumLowMgPerL + limits.calciumHighMgPerL) / 2,
  magnesium: (limits.magnesiumLowMgPerL + limits.magnesiumHighMgPerL) / 2,
});
