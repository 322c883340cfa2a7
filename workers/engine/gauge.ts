import type { Line } from '../../shared/verdict/lines';

/** One line, on which side of it its quantity stands, and the worst that was seen of it. */
export interface WatchedLine extends Line {
  readonly gauge: Gauge;
  isOut: boolean;
  worst: number;
  worstH: number;
}

const isBeyond = ({ trouble, limit }: Line, value: number): boolean =>
  trouble === 'above' ? value > limit : value < limit;

/** What stands on its limit is no longer beyond it: so near, a look is worth its while. */
const hair = (limit: number): number => 1e-15 * Math.abs(limit) + Number.MIN_VALUE;

/**
 * One quantity and all lines across it. It knows from which value to which nothing happens, no
 * line passed and no worst outdone: most looks end there.
 */
export class Gauge {
  now = NaN;
  /** Whether the last look went beyond what is calm. */
  stirred = false;
  readonly lines: WatchedLine[] = [];
  private low = NaN;
  private high = NaN;

  /** `place` is where it stands in what is read. */
  constructor(readonly place: number) {}

  look(quantities: Float64Array): boolean {
    const now = quantities[this.place]!;
    this.now = now;
    this.stirred = !(now >= this.low && now <= this.high);
    return this.stirred;
  }

  /** Whether the last look brought the quantity to the other side of a line. */
  passes(line: WatchedLine): boolean {
    const isOut = isBeyond(line, this.now);
    if (isOut === line.isOut) return false;
    line.isOut = isOut;
    return true;
  }

  /** Keeps the worst of each line. */
  noteWorst(timeH: number): void {
    for (const line of this.lines) {
      if (line.trouble === 'above' ? this.now <= line.worst : this.now >= line.worst) continue;
      line.worst = this.now;
      line.worstH = timeH;
    }
  }

  /** Works out what is calm from here: as long as a line has no worst yet, nothing is. */
  settle(): void {
    let [low, high] = [-Infinity, Infinity];
    for (const line of this.lines) {
      const { limit, trouble, worst } = line;
      if (trouble === 'above') high = Math.min(high, worst, line.isOut ? Infinity : limit);
      else low = Math.max(low, worst, line.isOut ? -Infinity : limit);
      if (line.isOut && trouble === 'above') low = Math.max(low, limit + hair(limit));
      if (line.isOut && trouble === 'below') high = Math.min(high, limit - hair(limit));
    }
    this.low = low;
    this.high = high;
  }
}
