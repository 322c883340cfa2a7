import type { TankView } from './tankView';

/** pH and alkalinity as they were, step by step: what moves too fast is judged against them. */
export class Past {
  private readonly timesH: number[] = [];
  private readonly phs: number[] = [];
  private readonly dkhs: number[] = [];

  note({ timeH, phNbs, alkalinityDkh }: TankView): void {
    this.timesH.push(timeH);
    this.phs.push(phNbs);
    this.dkhs.push(alkalinityDkh);
  }

  /** Largest move of pH within the hour before. */
  phChange = ({ timeH, phNbs }: TankView): number =>
    Math.abs(phNbs - this.before(this.phs, timeH - 1));

  /** Move of alkalinity against the same hour of the day before, dKH. */
  alkalinityChange = ({ timeH, alkalinityDkh }: TankView): number =>
    Math.abs(alkalinityDkh - this.before(this.dkhs, timeH - 24));

  /** A value at a moment, straight lines between steps; the first one before the trial began. */
  private before(values: readonly number[], timeH: number): number {
    const { timesH } = this;
    let [low, high] = [0, timesH.length - 1];
    if (timeH <= timesH[0]!) return values[0]!;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (timesH[middle]! <= timeH) low = middle;
      else high = middle;
    }
    const span = timesH[high]! - timesH[low]!;
    const part = span > 0 ? Math.min(1, (timeH - timesH[low]!) / span) : 1;
    return values[low]! + part * (values[high]! - values[low]!);
  }
}
