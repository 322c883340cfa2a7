import type { TankView } from './tankView';
import { SlidingExtreme } from './slidingExtreme';

/** Within how many hours each is judged. */
const PH_H = 1;
const ALKALINITY_H = 24;
/** Two doses a whole day apart are not both of one day. */
const AFTER_H = 1e-6;

/** A quantity over the hours that still count. */
interface Track {
  readonly timesH: readonly number[];
  readonly values: readonly number[];
}

/** pH and alkalinity as far back as they are judged. */
export interface Recent {
  readonly ph: Track;
  readonly dkh: Track;
}

/** One quantity as it was, step by step. */
class History {
  private readonly timesH: number[] = [];
  private readonly values: number[] = [];
  private readonly low = new SlidingExtreme(-1);
  private readonly high = new SlidingExtreme(1);
  private sought = 0;

  constructor(private readonly windowH: number) {}

  note(timeH: number, value: number): void {
    this.timesH.push(timeH);
    this.values.push(value);
    this.low.note(timeH, value, timeH - this.windowH);
    this.high.note(timeH, value, timeH - this.windowH);
  }

  /** What a window from now on looks back to, the note before it included. */
  get recent(): Track {
    const fromH = this.timesH.at(-1)! - this.windowH;
    const first = Math.max(
      0,
      this.timesH.findLastIndex((timeH) => timeH <= fromH),
    );
    return { timesH: this.timesH.slice(first), values: this.values.slice(first) };
  }

  recall({ timesH, values }: Track): void {
    timesH.forEach((timeH, i) => this.note(timeH, values[i]!));
  }

  /** How far a value is from the farthest that it had within the window before a moment. */
  largestMove(timeH: number, value: number): number {
    const fromH = timeH - this.windowH;
    const begin = this.at(fromH);
    return Math.max(
      Math.abs(value - begin),
      value - this.low.since(fromH + AFTER_H, value),
      this.high.since(fromH + AFTER_H, value) - value,
    );
  }

  /**
   * A value at a moment, straight lines between steps; the first one before the trial began. Moments
   * come in order, nearly: it is sought from where the last one lay.
   */
  private at(timeH: number): number {
    const { timesH, values } = this;
    const last = timesH.length - 1;
    if (timeH <= timesH[0]!) return values[0]!;
    if (timeH >= timesH[last]!) return values[last]!;
    let low = this.sought;
    while (timesH[low + 1]! <= timeH) low++;
    while (timesH[low]! > timeH) low--;
    this.sought = low;
    const span = timesH[low + 1]! - timesH[low]!;
    const part = span > 0 ? (timeH - timesH[low]!) / span : 1;
    return values[low]! + part * (values[low + 1]! - values[low]!);
  }
}

/** pH and alkalinity as they were: what moves too fast, at any moment, is judged against them. */
export class Past {
  private readonly ph = new History(PH_H);
  private readonly dkh = new History(ALKALINITY_H);

  constructor(before?: Recent) {
    if (!before) return;
    this.ph.recall(before.ph);
    this.dkh.recall(before.dkh);
  }

  get recent(): Recent {
    return { ph: this.ph.recent, dkh: this.dkh.recent };
  }

  /** To be called once what stands now has been compared with what was. */
  note({ timeH, phNbs, alkalinityDkh }: TankView): void {
    this.ph.note(timeH, phNbs);
    this.dkh.note(timeH, alkalinityDkh);
  }

  /** Largest move of pH within the hour before. */
  phChange = ({ timeH, phNbs }: TankView): number => this.ph.largestMove(timeH, phNbs);

  /** Largest move of alkalinity within the day before, dKH. */
  alkalinityChange = ({ timeH, alkalinityDkh }: TankView): number =>
    this.dkh.largestMove(timeH, alkalinityDkh);
}
