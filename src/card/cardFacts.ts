import type { ToldOffer } from '../say/plan/offer';

/** What a dose card says of a tank and the plan that it is kept by. */
export interface CardFacts {
  readonly tank: string;
  readonly date: string;
  /** The day of the next test, as a local time. */
  readonly nextTest: string;
  readonly targetDkh: number;
  /** As it was read, or typed where nothing was. */
  readonly useDkhPerDay: number;
  readonly candidate: ToldOffer;
  readonly correction: string;
}
