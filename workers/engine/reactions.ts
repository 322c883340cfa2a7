import type { Block } from '../../shared/species/block';
import type { Books } from './books';
import { movingPools, type Channel } from './channels';
import { flatTerms, type FlatTerms } from './flatTerms';

/** All reactions of a tank as flat tables, in the order of their rows. */
export class Reactions {
  readonly terms: FlatTerms;
  /** mol of oxygen that a mole of each gives to the tank (+) or takes (−). */
  private readonly oxygenMol: Float64Array;
  /** mol of chalk that a mole of each lets fall: the one pool whose amount a rate depends on. */
  private readonly chalkMol: Float64Array;
  private readonly inTank: FlatTerms;

  constructor(channels: readonly Channel[], books: Books) {
    this.terms = flatTerms(channels.map(({ terms }) => terms));
    this.inTank = flatTerms(channels.map(({ tankTerms }) => tankTerms));
    this.oxygenMol = Float64Array.from(channels, ({ oxygenMol }) => oxygenMol);
    this.chalkMol = new Float64Array(channels.length);
    for (const { channel, moles } of movingPools(channels, books, 'fallenChalk')) {
      this.chalkMol[channel]! += moles;
    }
  }

  /** Adds to a block what reactions at these rates bring to the tank. */
  addTo(block: Block, rates: Float64Array): void {
    const { ends, accounts, moles } = this.inTank;
    let t = 0;
    for (let c = 0; c < ends.length; c++) {
      const rate = rates[c]!;
      for (const end = ends[c]!; t < end; t++) block[accounts[t]!]! += moles[t]! * rate;
    }
  }

  oxygenOf(rates: Float64Array): number {
    return dot(this.oxygenMol, rates);
  }

  chalkOf(rates: Float64Array): number {
    return dot(this.chalkMol, rates);
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
