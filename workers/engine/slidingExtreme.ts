/**
 * The highest of what was noted within a window that only moves on, or with `sign` -1 the lowest:
 * each value is looked at twice.
 */
export class SlidingExtreme {
  /** Candidates in order of time, each beaten by none that came after it. */
  private readonly timesH: number[] = [];
  private readonly values: number[] = [];
  private first = 0;

  constructor(private readonly sign: 1 | -1) {}

  /** Notes a value, and forgets what is older than `fromH`. */
  note(timeH: number, value: number, fromH: number): void {
    const { timesH, values, sign } = this;
    while (this.first < timesH.length && timesH[this.first]! < fromH) this.first++;
    while (timesH.length > this.first && sign * values[values.length - 1]! <= sign * value) {
      timesH.pop();
      values.pop();
    }
    timesH.push(timeH);
    values.push(value);
  }

  /** The extreme since a moment not before the last `fromH`; `usual` when nothing was noted since. */
  since(fromH: number, usual: number): number {
    const { timesH, values } = this;
    for (let i = this.first; i < timesH.length; i++) if (timesH[i]! >= fromH) return values[i]!;
    return usual;
  }
}
