/** The extreme of what was noted within a window that only moves on: each value is looked at twice. */
export class SlidingExtreme {
  /** Candidates in order of time, each beaten by none that came after it. */
  private readonly timesH: number[] = [];
  private readonly values: number[] = [];
  private first = 0;

  constructor(private readonly beats: (a: number, b: number) => boolean) {}

  /** Notes a value, and forgets what is older than `fromH`. */
  note(timeH: number, value: number, fromH: number): void {
    const { timesH, values } = this;
    while (this.first < timesH.length && timesH[this.first]! < fromH) this.first++;
    while (timesH.length > this.first && !this.beats(values.at(-1)!, value)) {
      timesH.pop();
      values.pop();
    }
    timesH.push(timeH);
    values.push(value);
  }

  /** The extreme since a moment not before the last `fromH`; `usual` when nothing was noted since. */
  since(fromH: number, usual: number): number {
    for (let i = this.first; i < this.timesH.length; i++) {
      if (this.timesH[i]! >= fromH) return this.values[i]!;
    }
    return usual;
  }
}
