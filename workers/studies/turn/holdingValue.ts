import type { Lever } from './lever';

/** Where a lever holds the water at the target, and why not. */
export type Holding =
  | { readonly kind: 'holds'; readonly value: number; readonly dkhPerUnit: number }
  /** Even at its most, or at nothing, the water comes to rest elsewhere. */
  | { readonly kind: 'cannot'; readonly restsDkh: number };

/** So near to the target is on it, dKH. */
const CLOSE_DKH = 0.015;
const MOST_TRIES = 9;
/** The first step aside, as a share. */
const ASIDE = 0.2;

/**
 * By secant steps from where the lever stands, since every try is a run of the tank: `offDkh` is how
 * far above the target a value holds the water, and rises nearly evenly with it.
 */
export function holdingValue(
  { from, most }: Pick<Lever, 'from' | 'most'>,
  targetDkh: number,
  offDkh: (value: number) => number,
): Holding {
  let x = Math.min(most, from > 0 ? from : most / 8);
  let off = offDkh(x);
  const aside = off > 0 || x >= most ? x * (1 - ASIDE) : Math.min(most, x * (1 + ASIDE));
  let [before, offBefore] = [x, off];
  [x, off] = [aside, offDkh(aside)];
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const dkhPerUnit = (off - offBefore) / (x - before);
    const best = Math.abs(off) <= Math.abs(offBefore) ? { x, off } : { x: before, off: offBefore };
    if (!(dkhPerUnit > 0)) return { kind: 'cannot', restsDkh: targetDkh + best.off };
    if (Math.abs(best.off) <= CLOSE_DKH) return { kind: 'holds', value: best.x, dkhPerUnit };
    const next = Math.max(0, Math.min(most, best.x - best.off / dkhPerUnit));
    if (next === x || next === before) return { kind: 'cannot', restsDkh: targetDkh + best.off };
    [before, offBefore] = [best.x, best.off];
    [x, off] = [next, offDkh(next)];
  }
  return { kind: 'cannot', restsDkh: targetDkh + off };
}
