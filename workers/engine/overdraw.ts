import { WATER } from '../../shared/species/block';
import type { Term } from './books';
import type { Channel } from './channels';

/**
 * When a step would take more of a species than there is, all that consume it are scaled together:
 * extents are scaled, amounts never clamped. Returns whether anything was scaled.
 */
export function scaleOverdraw(
  channels: readonly Channel[],
  extents: Float64Array,
  tank: Float64Array,
  inflow: Float64Array,
): boolean {
  const terms = channels.map(({ tankTerms }) => tankTerms);
  let scaled = false;
  for (let species = 0; species < WATER; species++) {
    if (scaleDraws(terms, extents, species, tank[species]!, inflow[species]!)) scaled = true;
  }
  return scaled;
}

/** Scales what draws on one account, that holds so much and is given so much beside. */
export function scaleDraws(
  terms: readonly (readonly Term[])[],
  extents: Float64Array,
  account: number,
  heldMol: number,
  givenMol: number,
): boolean {
  let drawn = 0;
  let made = givenMol;
  terms.forEach((own, c) => {
    for (const { index, moles } of own) {
      if (index !== account) continue;
      const change = moles * extents[c]!;
      if (change < 0) drawn -= change;
      else made += change;
    }
  });
  const available = Math.max(0, heldMol + made);
  if (drawn <= available || drawn === 0) return false;
  terms.forEach((own, c) => {
    const consumes = own.some(({ index, moles }) => index === account && moles * extents[c]! < 0);
    if (consumes) extents[c]! *= available / drawn;
  });
  return true;
}
