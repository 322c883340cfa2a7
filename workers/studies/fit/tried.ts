import type { Before } from './before';
import type { Kind } from './restlessness';
import type { Followed } from './wander';

/** A guess of the grid, and what it finds. */
export interface Tried {
  readonly kind: Kind;
  readonly spread: number;
  readonly prior: Before;
  /** How much each reading counts for, by this kind. */
  readonly weights: readonly number[];
  readonly found: Followed;
  readonly logOdds: number;
}

export interface Shared extends Tried {
  readonly share: number;
}

export const likeliest = <T extends Tried>(all: readonly T[]): T =>
  all.reduce((a, b) => (b.logOdds > a.logOdds ? b : a));
