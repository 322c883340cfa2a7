/** Below this slope a map hardly pulls back: a secant would send the next try far away. */
const LEAST_SLOPE = 1e-4;
const FARTHEST = 1;

/** Seeks where a map x → x + gap comes to rest, by secant steps of at most a factor e in what x is the logarithm of. */
export class Secant {
  private before: { readonly x: number; readonly gap: number } | undefined;

  /** The next x to try, from this one and how far the map moved it. */
  next(x: number, gap: number): number {
    const { before } = this;
    const slope = before && before.x !== x ? (gap - before.gap) / (x - before.x) : -1;
    this.before = { x, gap };
    const move = slope < -LEAST_SLOPE ? -gap / slope : gap;
    return x + Math.max(-FARTHEST, Math.min(FARTHEST, move));
  }
}
