import { poolsWith } from '../../shared/species/species';
import type { Books, Term } from './books';
import { movingPools, type Channel, type Moving } from './channels';
import { scaleDraws } from './overdraw';

const solid = ['skeleton', 'fallenChalk'] as const;

/**
 * What corals have laid down, and chalk that has fallen. A step that ends just beyond the corner where
 * either begins lays down a hair less than nothing, by its error: Hermite's formula takes the drift at
 * its end for that of all the step. Where nothing lies yet, there is nothing to take it from.
 */
export class SolidPools {
  private readonly terms: readonly (readonly Term[])[];
  /** What moves each pool, pool by pool. */
  private readonly moved: readonly (readonly Moving[])[];

  constructor(
    channels: readonly Channel[],
    private readonly books: Books,
  ) {
    this.terms = channels.map(({ terms }) => terms);
    const moving = solid.flatMap((role) => movingPools(channels, books, role));
    this.moved = solid
      .flatMap(poolsWith)
      .map((id) => moving.filter(({ account }) => account === books.poolIndex(id)))
      .filter(({ length }) => length > 0);
  }

  /** Scales extents that would leave less than nothing; returns whether there were any. */
  scale(extents: Float64Array): boolean {
    let scaled = false;
    // An exchange fills one pool from another: what is scaled of it may leave the first short.
    for (let pass = 0; pass < this.moved.length && this.scaleOnce(extents); pass++) scaled = true;
    return scaled;
  }

  private scaleOnce(extents: Float64Array): boolean {
    const { moved, terms, books } = this;
    let scaled = false;
    for (let p = 0; p < moved.length; p++) {
      const own = moved[p]!;
      const { account } = own[0]!;
      const heldMol = books.amounts[account]!;
      let leftMol = heldMol;
      for (let m = 0; m < own.length; m++) leftMol += own[m]!.moles * extents[own[m]!.channel]!;
      if (leftMol < 0 && scaleDraws(terms, extents, account, heldMol, 0)) scaled = true;
    }
    return scaled;
  }
}
