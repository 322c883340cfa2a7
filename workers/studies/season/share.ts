import type { Account } from '../../engine/trialRun';
import type { Block } from '../../../shared/species/block';
import type { LedgerRole } from '../../../shared/trace/trace';
import type { SeasonQuantity } from './quantity';

/** What can move calcium, magnesium or salinity. */
export type Mover =
  | 'growth'
  | 'chalk'
  | 'pumps'
  | 'topOff'
  | 'reactor'
  | 'byHand'
  | 'waterChanges'
  | 'lost'
  /** What is in the tank in more or less water, and what is too small to name. */
  | 'level';

/** How much one of them moved a quantity, in its unit. */
export interface Share {
  readonly mover: Mover;
  readonly moved: number;
}

const moverOf: Readonly<Record<LedgerRole, Mover>> = {
  growth: 'growth',
  chalk: 'chalk',
  pump: 'pumps',
  topOff: 'topOff',
  reactor: 'reactor',
  byHand: 'byHand',
  waterChange: 'waterChanges',
  lost: 'lost',
  spill: 'lost',
  life: 'level',
  exchange: 'level',
};

/** One stretch of a run: its tank's water before and after, and what each row brought. */
export interface Counted {
  readonly before: Block;
  readonly after: Block;
  readonly accounts: readonly Account[];
}

/**
 * The change of a concentration c = n/V as a sum over what moved it, exactly:
 * n₁/V₁ − n₀/V₀ = (Σ Δn − c₀ ΔV)/V₁, by the engine's own accounts. `from` and `to` are the
 * concentrations, so that V = n/c; the last term, more or less water, is the level's share.
 */
export function sharesOf(
  { held, told }: SeasonQuantity,
  stretches: readonly Counted[],
  from: number,
  to: number,
): Share[] {
  const size = held(stretches.at(-1)!.after) / to;
  const moved = new Map<Mover, number>();
  for (const { row, brought } of stretches.flatMap(({ accounts }) => accounts)) {
    const mover = moverOf[row.role];
    moved.set(mover, (moved.get(mover) ?? 0) + held(brought) / size);
  }
  const before = held(stretches[0]!.before) / from;
  moved.set('level', (moved.get('level') ?? 0) - (from * (size - before)) / size);
  const all = [...moved].map(([mover, by]): Share => ({ mover, moved: by }));
  const isTold = ({ moved: by }: Share) => Math.abs(by) >= told;
  const named = all.filter((share) => share.mover !== 'level' && isTold(share));
  const rest = all
    .filter((share) => !named.includes(share))
    .reduce((sum, one) => sum + one.moved, 0);
  const level: Share = { mover: 'level', moved: rest };
  return [
    ...named.toSorted((a, b) => Math.abs(b.moved) - Math.abs(a.moved)),
    ...(isTold(level) ? [level] : []),
  ];
}
