import { inOrder, sameReading, type Reading } from '../../shared/log/reading';
import { emptyLog, type TankLog } from '../../shared/log/tankLog';
import { Edits } from '../store/edits.svelte';
import { mergeLogs } from '../store/mergeTanks';
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
  follow(log: TankLog): void {
    const shown = this.now;
    if (!same(shown, log)) this.edits.follow(log, (step) => mergeLogs(shown, step, log));
  }

  add(readings: readonly Reading[]): void {
    this.set({ readings: inOrder([...this.readings, ...readings]) });
  }
  replace(old: Reading, reading: Reading): void {
    this.set({ readings: inOrder(this.readings.map((r) => (r === old ? reading : r))) });
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
