import { alkalinityEq, BLOCK_SIZE, indexOf, WATER } from '../../shared/species/block';
import {
  dissolved,
  dissolvedIds,
  poolIds,
  pools,
  type Composition,
  type TrackedElement,
} from '../../shared/species/species';
import type { OxygenDemand } from '../../shared/species/oxygenDemand';
import type { Books } from './books';

/** Oxygen is followed as what is free less what others could still take of it. */
type Accounted = TrackedElement | 'O';
type Totals = Map<Accounted, { sum: number; size: number }>;

/** What an account holds of each element, and of oxygen by what it would still take of it. */
function addTo(totals: Totals, elements: Composition, demand: number, amount: number): void {
  const counts = { ...elements, O: -2 * demand };
  for (const [element, count] of Object.entries(counts) as [Accounted, number][]) {
    const total = totals.get(element) ?? { sum: 0, size: 0 };
    total.sum += count * amount;
    total.size += Math.abs(count * amount);
    totals.set(element, total);
  }
}

const exactly = ({ amounts, lost }: Books, account: number): number =>
  amounts[account]! + lost[account]!;

function elementTotals(books: Books): Totals {
  const totals: Totals = new Map();
  const poolOffset = books.amounts.length - poolIds.length;
  for (let offset = 0; offset < poolOffset; offset += BLOCK_SIZE) {
    for (const id of dissolvedIds) {
      const amount = exactly(books, offset + indexOf[id]);
      addTo(totals, dissolved[id].elements, books.demand[id] ?? 0, amount);
    }
  }
  poolIds.forEach((id, i) => {
    const amount = exactly(books, poolOffset + i);
    addTo(totals, pools[id].elements, books.demand[id] ?? 0, amount);
  });
  return totals;
}

export interface Closures {
  /** Alkalinity from the ions now, against the start and all ledger rows, µmol/kg. */
  readonly alkalinityUmolPerKg: number;
  /** Each element over all accounts against the start, relative to all there is of it. */
  readonly elements: Partial<Record<Accounted, number>>;
}

/** What all later moments are held against. */
export interface ClosureStart {
  readonly eq: number;
  readonly elements: ReadonlyMap<Accounted, { readonly sum: number }>;
  /** What oxygen was weighed with. */
  readonly demand: OxygenDemand;
}

function startOf(books: Books): ClosureStart {
  const eq = alkalinityEq(books.tank) - books.ledgerEq.reduce((a, b) => a + b, 0);
  return { eq, elements: elementTotals(books), demand: books.demand };
}

/** A start from before a change of plan; oxygen is counted anew where life asks another amount of it. */
function goneOn(books: Books, from: ClosureStart): ClosureStart {
  const now = startOf(books);
  const same = JSON.stringify(now.demand) === JSON.stringify(from.demand);
  if (same) return from;
  return {
    ...now,
    eq: from.eq,
    elements: new Map([...from.elements, ['O', now.elements.get('O')!]]),
  };
}

/** Two independent checks: one sees what was not booked, the other what was booked wrongly. */
export class ClosureCheck {
  readonly start: ClosureStart;

  constructor(
    private readonly books: Books,
    from?: ClosureStart,
  ) {
    this.start = from ? goneOn(books, from) : startOf(books);
  }

  measure(): Closures {
    const { tank, ledgerEq } = this.books;
    const booked = ledgerEq.reduce((a, b) => a + b, this.start.eq);
    const kg = tank[WATER]!;
    const elements: Closures['elements'] = {};
    for (const [element, { sum, size }] of elementTotals(this.books)) {
      const before = this.start.elements.get(element)!.sum;
      elements[element] = size === 0 ? 0 : Math.abs(sum - before) / size;
    }
    return { alkalinityUmolPerKg: (Math.abs(alkalinityEq(tank) - booked) / kg) * 1e6, elements };
  }
}
