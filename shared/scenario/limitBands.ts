import type { Scenario } from './schema';

export type LimitId = 'alkalinity' | 'ph' | 'calcium' | 'magnesium' | 'salinity' | 'temperature';

export interface Band {
  readonly id: LimitId;
  readonly low: number;
  readonly high: number;
}

/** The keeper's limits as bands. */
export const limitBands = (limits: Scenario['limits']): Band[] => [
  { id: 'alkalinity', low: limits.alkalinityLowDkh, high: limits.alkalinityHighDkh },
  { id: 'ph', low: limits.phLowNbs, high: limits.phHighNbs },
  { id: 'calcium', low: limits.calciumLowMgPerL, high: limits.calciumHighMgPerL },
  { id: 'magnesium', low: limits.magnesiumLowMgPerL, high: limits.magnesiumHighMgPerL },
  { id: 'salinity', low: limits.salinityLowPractical, high: limits.salinityHighPractical },
  { id: 'temperature', low: limits.tempLowC, high: limits.tempHighC },
];
