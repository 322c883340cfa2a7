import { inOrder, sameReading, type Reading } from '../../shared/log/reading';
import { emptyLog, type TankLog } from '../../shared/log/tankLog';
import { Edits } from '../store/edits.svelte';
import { same } from '../store/same';

/** The test log of the open tank: enter, edit, delete, undo. */
export class TestLog {
  readonly edits: Edits<TankLog>;

  constructor(onChange: (log: TankLog) => void) {
    this.edits = new Edits(emptyLog, { changed: onChange });
  }

  get now(): TankLog {
    return this.edits.now;
  }
  get readings(): readonly Reading[] {
    return this.now.readings;
  }

  /** Takes over what another window has made of this log; what was done here can still be undone. */
  follow(log: TankLog, onto: (step: TankLog) => TankLog): void {
    if (!same(this.now, log)) this.edits.follow(log, onto);
  }

  add(readings: readonly Reading[]): void {
    this.set({ readings: inOrder([...this.readings, ...readings]) });
  }
  /** Another window may have taken out the old one meanwhile: what was typed comes in all the same. */
  replace(old: Reading, reading: Reading): void {
    const i = this.readings.findIndex((one) => sameReading(one, old));
    this.set({ readings: inOrder([...this.readings.filter((_, place) => place !== i), reading]) });
  }
  remove(reading: Reading): void {
    this.set({ readings: this.readings.filter((r) => r !== reading) });
  }
  knows(reading: Reading): boolean {
    return this.readings.some((other) => sameReading(other, reading));
  }

  /** How the log is to be read, or its lines: one step to undo. */
  set(change: Partial<TankLog>): void {
    this.edits.step({ ...this.now, ...change });
  }
}
