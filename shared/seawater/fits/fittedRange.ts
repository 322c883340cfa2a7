import type { ReferenceKey } from '../../references';

/** The water a published fit was made in; outside it the formula extrapolates. */
export interface FittedRange {
  tempC: readonly [number, number];
  salinityPractical: readonly [number, number];
  source: ReferenceKey;
}
