import type { Line } from '../../shared/verdict/lines';
import type { Past } from './past';
import type { TankView } from './tankView';

export type Read = (view: TankView, past: Past) => number;

/** One line, on which side of it its quantity stands, and the worst that was seen of it. */
export interface WatchedLine extends Line {
  readonly gauge: Gauge;
  isOut: boolean;
  worst: number;
  worstH: number;
}

const isBeyond = ({ trouble, limit }: Line, value: number): boolean =>
  trouble === 'above' ? value > limit : value < limit;

/**
 * One quantity and all lines across it. It knows between which values nothing happens, no line
 * passed and no worst outdone: most looks end there.
 */
export class Gauge {
  now = NaN;
  /** Whether the last look went beyond what is calm. */
  stirred = false;
  readonly lines: WatchedLine[] = [];
  private low = NaN;
  private high = NaN;

  constructor(readonly read: Read) {}

  look(view: TankView, past: Past): boolean {
    const now = this.read(view, past);
    this.now = now;
    this.stirred = !(now > this.low && now < this.high);
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
    for (const { limit, trouble, worst } of this.lines) {
      if (limit <= this.now) low = Math.max(low, limit);
      if (limit >= this.now) high = Math.min(high, limit);
      if (trouble === 'above') high = Math.min(high, worst);
      else low = Math.max(low, worst);
    }
    this.low = low;
    this.high = high;
  }
}
