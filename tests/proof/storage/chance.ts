import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Draws that a seed repeats. */
export class Chance {
  private readonly source;

  constructor(seed: number) {
    this.source = xoroshiro128plus(seed);
  }

  /** A whole number, both ends among them. */
  int(from: number, to: number): number {
    return uniformInt(this.source, from, to);
  }
  /** Whether something happens that does so in so many of a hundred. */
  percent(of: number): boolean {
    return this.int(1, 100) <= of;
  }
  pick<T>(list: readonly T[]): T {
    return list[this.int(0, list.length - 1)]!;
  }
}
