import type { BenchPlans } from './plans';
import { keepForNextVisit, loadBench, saveBench } from './store';

/** During a drag something is written this often, not only when it ends. */
const SAVE_EVERY_MS = 250;

/** Writes the bench a moment after each change; never before what was saved has been read. */
export class Autosave {
  private restored = false;
  private waiting: BenchPlans | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly onTrouble: (notice: string) => void) {}

  /** What was saved last, if anything. */
  async restore(): Promise<BenchPlans | undefined> {
    try {
      const { bench, setAside } = await loadBench();
      if (setAside) {
        this.onTrouble(
          'Some of what was saved here could not be read. It was put aside, not lost.',
        );
      }
      return bench;
    } catch {
      this.onTrouble(
        'This browser keeps nothing between visits here. Save your plan as a file instead.',
      );
      return undefined;
    } finally {
      this.restored = true;
    }
  }

  soon(bench: BenchPlans): void {
    if (!this.restored) return;
    this.waiting = bench;
    this.timer ??= setTimeout(() => void this.now(), SAVE_EVERY_MS);
  }

  /** The page is going away, too soon for the database: what waits is left where it can be found. */
  beforeLeaving(): void {
    if (this.waiting) keepForNextVisit(this.waiting);
  }

  private async now(): Promise<void> {
    this.timer = undefined;
    const bench = this.waiting;
    if (!bench) return;
    try {
      await saveBench(bench);
      if (this.waiting === bench) this.waiting = undefined;
    } catch {
      this.onTrouble('Nothing could be saved in this browser. Save your plan as a file instead.');
    }
  }
}
