import { INSTANT_H } from '../scenario/clock';

/** Minutes a pump may run in a clock hour and in a day; 0 is no limit. */
interface Limits {
  readonly minPerH: number;
  readonly minPerDay: number;
}

/** Counts a pump's running time and says when it has had its share. */
export class RunLimit {
  readonly memory = { lastH: 0, thisHourH: 0, thisDayH: 0 };

  constructor(
    private readonly limits: Limits,
    private readonly clockHour: number,
  ) {}

  private get limited(): boolean {
    return this.limits.minPerH > 0 || this.limits.minPerDay > 0;
  }

  /** To be told at every act whether the pump ran since the last one. */
  note(timeH: number, ran: boolean): void {
    const { memory } = this;
    const clock = (at: number) => at + this.clockHour + INSTANT_H;
    if (ran) {
      memory.thisHourH += timeH - memory.lastH;
      memory.thisDayH += timeH - memory.lastH;
    }
    if (Math.floor(clock(timeH)) !== Math.floor(clock(memory.lastH))) memory.thisHourH = 0;
    if (Math.floor(clock(timeH) / 24) !== Math.floor(clock(memory.lastH) / 24)) memory.thisDayH = 0;
    memory.lastH = timeH;
  }

  /** Hours that the pump may still run before a limit stops it. */
  private leftH(): number {
    const left = (minutes: number, usedH: number) =>
      minutes > 0 ? minutes / 60 - usedH : Infinity;
    return Math.min(
      left(this.limits.minPerH, this.memory.thisHourH),
      left(this.limits.minPerDay, this.memory.thisDayH),
    );
  }

  allows(): boolean {
    return !this.limited || this.leftH() > INSTANT_H;
  }

  /** The next moment at which a limit may stop the pump, or a new hour frees it. */
  nextClockH(timeH: number, running: boolean): number {
    if (!this.limited) return Infinity;
    const nextHour = Math.floor(timeH + this.clockHour + INSTANT_H) + 1 - this.clockHour;
    const left = this.leftH();
    // A pump that no limit holds runs on past its share: only the next hour is news then.
    return running && left > INSTANT_H ? Math.min(nextHour, timeH + left) : nextHour;
  }
}
