import { inOrder, sameReading, type Reading } from '../../shared/log/reading';
import { emptyLog, type TankLog } from '../../shared/log/tankLog';
import { History } from '../store/history';
import { mergeLogs } from '../store/mergeTanks';
import { same } from '../store/same';

/** The test log of the open tank: enter, edit, delete, undo. */
export class TestLog {
  private state: TankLog = $state.raw(emptyLog);
  /** Counts changes, so that what asks the history is asked again. */
  private changes = $state(0);
  private history = new History<TankLog>();

  constructor(private readonly onChange: (log: TankLog) => void) {}

  get now(): TankLog {
    return this.state;
  }
  get readings(): readonly Reading[] {
    return this.state.readings;
  }
  get canUndo(): boolean {
    return this.changes >= 0 && this.history.canUndo;
  }
  get canRedo(): boolean {
    return this.changes >= 0 && this.history.canRedo;
  }

  /** Shows another tank's log; what was done to the last one is not undone in this. */
  open(log: TankLog): void {
    this.history = new History();
    this.state = log;
    this.changes++;
  }

  /** Takes over what another window has made of this log; what was done here can still be undone. */
  follow(log: TankLog): void {
    const shown = this.state;
    if (same(shown, log)) return;
    this.history.rebase((state) => mergeLogs(shown, state, log));
    this.state = log;
    this.changes++;
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
    this.history.remember(this.state, 'a step');
    this.history.settle();
    this.show({ ...this.state, ...change });
  }

  undo(): void {
    const state = this.history.undo(this.state);
    if (state) this.show(state);
  }
  redo(): void {
    const state = this.history.redo(this.state);
    if (state) this.show(state);
  }

  private show(log: TankLog): void {
    this.state = log;
    this.changes++;
    this.onChange(log);
  }
}
