import type { BenchPlans } from './plans';
import { loadBench, saveBench } from './store';

const SAVE_AFTER_MS = 300;

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
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.now(), SAVE_AFTER_MS);
  }

  /** Saves what waits at once; to be called when the page is about to be hidden. */
  async now(): Promise<void> {
    clearTimeout(this.timer);
    const bench = this.waiting;
    this.waiting = undefined;
    if (!bench) return;
    try {
      await saveBench(bench);
    } catch {
      this.onTrouble('Nothing could be saved in this browser. Save your plan as a file instead.');
    }
  }
}
