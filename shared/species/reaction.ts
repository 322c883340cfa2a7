import { inFigures } from '../units/digits';
import {
  dissolved,
  pools,
  type Composition,
  type TrackedElement,
  type ReactantId,
} from './species';

/**
 * Moles made (+) or used (−) when a reaction advances by one mole. A class, so that a process has
 * to spell its terms here, where the compiler takes no name but a species' or a pool's: a bare
 * object that names alkalinity would slip through an arrow function.
 */
export class Reaction {
  private readonly spelled = true;
  constructor(readonly terms: Partial<Record<ReactantId, number>>) {
    for (const id of Object.keys(terms)) {
      if (!(id in dissolved || id in pools) || !this.spelled) {
        throw new RangeError(`A reaction names '${id}', which is neither a species nor a pool.`);
      }
    }
  }
}

const compositionOf = (id: ReactantId): Composition =>
  id in dissolved
    ? dissolved[id as keyof typeof dissolved].elements
    : pools[id as keyof typeof pools].elements;

export const termsOf = (reaction: Reaction): [ReactantId, number][] =>
  (Object.entries(reaction.terms) as [ReactantId, number][]).filter(([, moles]) => moles !== 0);

/** What a reaction makes from nothing (+) or loses (−) of each element, mol per mol of advance. */
export function imbalance(reaction: Reaction): Composition {
  const totals: Composition = {};
  for (const [id, moles] of termsOf(reaction)) {
    for (const [element, count] of Object.entries(compositionOf(id)) as [
      TrackedElement,
      number,
    ][]) {
      totals[element] = (totals[element] ?? 0) + moles * count;
    }
  }
  const off = Object.entries(totals).filter(([, amount]) => Math.abs(amount) > 1e-12);
  return Object.fromEntries(off);
}

/** Refuses a reaction that does not balance, with a table of what does not. */
export function assertBalanced(owner: string, reaction: Reaction): void {
  const off = Object.entries(imbalance(reaction));
  if (off.length === 0) return;
  const rows = off.map(([element, amount]) => `  ${element.padEnd(3)} ${inFigures(amount, 6)} mol`);
  const terms = termsOf(reaction).map(([id, moles]) => `${moles} ${id}`);
  throw new RangeError(
    `The reaction of '${owner}' does not balance.\n  ${terms.join(', ')}\nper mole of reaction:\n${rows.join('\n')}`,
  );
}
