import { WATER } from '../../shared/species/block';
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
  let scaled = false;
  for (let species = 0; species < WATER; species++) {
    let drawn = 0;
    let made = inflow[species]!;
    channels.forEach(({ tankTerms }, c) => {
      for (const { index, moles } of tankTerms) {
        if (index !== species) continue;
        const change = moles * extents[c]!;
        if (change < 0) drawn -= change;
        else made += change;
      }
    });
    const available = Math.max(0, tank[species]! + made);
    if (drawn <= available || drawn === 0) continue;
    scaled = true;
    channels.forEach(({ tankTerms }, c) => {
      const consumes = tankTerms.some(
        ({ index, moles }) => index === species && moles * extents[c]! < 0,
      );
      if (consumes) extents[c]! *= available / drawn;
    });
  }
  return scaled;
}
