import { alkalinityEq, BLOCK_SIZE, indexOf, WATER } from '../../shared/species/block';
import {
  dissolved,
  dissolvedIds,
  poolIds,
  pools,
  type Composition,
  type TrackedElement,
} from '../../shared/species/species';
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

/** Two independent checks: one sees what was not booked, the other what was booked wrongly. */
export class ClosureCheck {
  private readonly startEq: number;
  private readonly startElements: Totals;

  constructor(private readonly books: Books) {
    this.startEq = alkalinityEq(books.tank) - books.ledgerEq.reduce((a, b) => a + b, 0);
    this.startElements = elementTotals(books);
  }

  measure(): Closures {
    const { tank, ledgerEq } = this.books;
    const booked = ledgerEq.reduce((a, b) => a + b, this.startEq);
    const kg = tank[WATER]!;
    const elements: Closures['elements'] = {};
    for (const [element, { sum, size }] of elementTotals(this.books)) {
      const start = this.startElements.get(element)!.sum;
      elements[element] = size === 0 ? 0 : Math.abs(sum - start) / size;
    }
    return { alkalinityUmolPerKg: (Math.abs(alkalinityEq(tank) - booked) / kg) * 1e6, elements };
  }
}
