import type { Lever } from './lever';

/** Where a lever holds the water at the target, and why not. */
export type Holding =
  | { readonly kind: 'holds'; readonly value: number; readonly dkhPerUnit: number }
  /** Even at its most, or at nothing, the water comes to rest elsewhere. */
  | {
      readonly kind: 'cannot';
      readonly restsDkh: number;
      /** Where it comes nearest. */
      readonly value: number;
      readonly dkhPerUnit: number;
    };

/** So near to the target is on it, dKH. */
const CLOSE_DKH = 0.015;
const MOST_TRIES = 24;
/** The first step aside, as a share. */
const ASIDE = 0.2;
/** At one go so many times as much: where corals starve, more of it hardly raises the water, and then all at once. */
const MOST_TIMES = 4;

interface Tried {
  readonly x: number;
  readonly off: number;
}

/**
 * By secant steps from where the lever stands, since every try is a run of the tank: `offDkh` is how
 * far above the target a value holds the water, and rises with it. Once a value is known on either
 * side of the target, every try lies between the nearest two, and in their midst where the last one
 * came no nearer by half.
 */
export function holdingValue(
  { from, most }: Pick<Lever, 'from' | 'most'>,
  targetDkh: number,
  offDkh: (value: number) => number,
): Holding {
  const at = (x: number): Tried => ({ x, off: offDkh(x) });
  let before = at(Math.min(most, from > 0 ? from : most / 8));
  const down = before.off > 0 || before.x >= most;
  let last = at(down ? before.x * (1 - ASIDE) : Math.min(most, before.x * (1 + ASIDE)));
  const tried = [before, last];
  let dkhPerUnit = 0;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const best = nearest(tried);
    dkhPerUnit = (last.off - before.off) / (last.x - before.x);
    if (Math.abs(best.off) <= CLOSE_DKH && dkhPerUnit > 0) {
      return { kind: 'holds', value: best.x, dkhPerUnit };
    }
    const x = nextOf(tried, dkhPerUnit, most);
    if (x === undefined) break;
    before = last;
    last = at(x);
    tried.push(last);
  }
  const { x: value, off } = nearest(tried);
  return { kind: 'cannot', restsDkh: targetDkh + off, value, dkhPerUnit };
}

const nearest = (tried: readonly Tried[]): Tried =>
  tried.reduce((a, b) => (Math.abs(b.off) < Math.abs(a.off) ? b : a));

/** Where to try next; undefined where there is nothing more to try. */
function nextOf(tried: readonly Tried[], dkhPerUnit: number, most: number): number | undefined {
  const low = tried.filter(({ off }) => off <= 0).reduce((a, { x }) => Math.max(a, x), -Infinity);
  const high = tried.filter(({ off }) => off > 0).reduce((a, { x }) => Math.min(a, x), Infinity);
  const last = tried.at(-1)!;
  const secant = dkhPerUnit > 0 ? last.x - last.off / dkhPerUnit : NaN;
  if (high > low && low > -Infinity && high < Infinity) {
    const best = nearest(tried.slice(0, -1));
    const isNearing = Math.abs(last.off) <= Math.abs(best.off) / 2;
    return isNearing && secant > low && secant < high ? secant : (low + high) / 2;
  }
  const upMost = Math.min(most, MOST_TIMES * last.x);
  const wanted = last.off > 0 ? secant : Math.min(upMost, Number.isNaN(secant) ? upMost : secant);
  const x = Math.max(0, Math.min(most, wanted));
  return Number.isNaN(x) || tried.some((one) => one.x === x) ? undefined : x;
}
