import { Windows } from '../faults/windows';
import type { Scenario } from '../scenario/schema';

interface State {
  /** How much of what was meant goes in. */
  readonly times: number;
  readonly stuckOn: boolean;
}

/** What is wrong with one dosing pump, and when. */
export class DoserFaults {
  private readonly on;
  private readonly off;
  private readonly rate;
  private readonly cuts;

  constructor({ faults, start }: Scenario, index: number) {
    const own = faults.filter(({ pump }) => Math.round(pump) === index + 1);
    this.on = new Windows(own, 'doserOn', start.clockHour);
    this.off = new Windows(own, 'doserOff', start.clockHour);
    this.rate = new Windows(own, 'doserRate', start.clockHour);
    this.cuts = new Windows(faults, 'powerCut', start.clockHour);
  }

  get canStick(): boolean {
    return this.on.all.length > 0;
  }

  at(timeH: number): State {
    if (this.cuts.at(timeH) ?? this.off.at(timeH)) return { times: 0, stuckOn: false };
    return {
      times: this.rate.at(timeH)?.times ?? 1,
      stuckOn: this.on.at(timeH) !== undefined,
    };
  }

  nextEdgeH(timeH: number): number {
    const all = [this.on, this.off, this.rate, this.cuts];
    return Math.min(...all.map((windows) => windows.nextEdgeH(timeH)));
  }
}
