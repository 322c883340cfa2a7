/** Two numbers that are sought together. */
export type Pair = readonly [number, number];

/** How the gaps of a map answer to what it is given: gap by gap, and in each the first number first. */
export type Answering = readonly [Pair, Pair];

/** A map that forgets what it was given: what it gives is where it rests. */
export const forgetful: Answering = [
  [-1, 0],
  [0, -1],
];

const FARTHEST = 1;
/** Below this a map hardly pulls back: a step would go far away. */
const LEAST_PULL = 1e-4;

/**
 * Seeks where a map x → x + gap of two numbers comes to rest (broyden1965, the first of his methods):
 * Newton steps, with slopes that learn from each step and can be handed on to a map much like it.
 */
export class Broyden {
  private before: { readonly x: Pair; readonly gap: Pair } | undefined;

  constructor(public answering: Answering = forgetful) {}

  /** The next x to try, from this one and how far the map moved it. */
  next(x: Pair, gap: Pair): Pair {
    const { before } = this;
    if (before) this.learn([x[0] - before.x[0], x[1] - before.x[1]], gap, before.gap);
    this.before = { x, gap };
    const [move, other] = this.step(gap);
    const tooFar = Math.max(1, Math.abs(move) / FARTHEST, Math.abs(other) / FARTHEST);
    return [x[0] + move / tooFar, x[1] + other / tooFar];
  }

  private learn(moved: Pair, gap: Pair, before: Pair): void {
    const [u, v] = moved;
    const all = u * u + v * v;
    if (all === 0) return;
    const line = ([a, b]: Pair, i: 0 | 1): Pair => {
      const missed = (gap[i] - before[i] - a * u - b * v) / all;
      return [a + missed * u, b + missed * v];
    };
    this.answering = [line(this.answering[0], 0), line(this.answering[1], 1)];
  }

  private step(gap: Pair): Pair {
    const [[a, b], [c, d]] = this.answering;
    const determinant = a * d - b * c;
    const pulls = a < 0 && d < 0 && determinant > LEAST_PULL;
    if (!pulls) return gap;
    return [(b * gap[1] - d * gap[0]) / determinant, (c * gap[0] - a * gap[1]) / determinant];
  }
}
