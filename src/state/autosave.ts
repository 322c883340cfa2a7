import { keepForNextVisit, loadTanks, removeTank, saveTank } from './store';
import type { Tank } from './tanks';

/** During a drag something is written this often, not only when it ends. */
const SAVE_EVERY_MS = 250;
const NOT_SAVED =
  'Nothing could be saved in this browser. Save your plan and your log as files instead.';

/** Writes a tank a moment after each change; never before what was saved has been read. */
export class Autosave {
  private restored = false;
  private waiting: Tank | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly onTrouble: (notice: string) => void) {}

  /** What was saved last, if anything. */
  async restore(): Promise<readonly Tank[]> {
    try {
      const { tanks, setAside } = await loadTanks();
      if (setAside) {
        this.onTrouble(
          'Some of what was saved here could not be read. It was put aside, not lost.',
        );
      }
      return tanks;
    } catch {
      this.onTrouble(
        'This browser keeps nothing between visits here. Save your plan and your log as files instead.',
      );
      return [];
    } finally {
      this.restored = true;
    }
  }

  soon(tank: Tank): void {
    if (!this.restored) return;
    if (this.waiting && this.waiting.id !== tank.id) void this.now();
    this.waiting = tank;
    this.timer ??= setTimeout(() => void this.now(), SAVE_EVERY_MS);
  }

  /** The page is going away, too soon for the database: what waits is left where it can be found. */
  beforeLeaving(): void {
    if (this.waiting) keepForNextVisit(this.waiting);
  }

  async remove(id: string): Promise<void> {
    if (this.waiting?.id === id) this.waiting = undefined;
    await removeTank(id).catch(() => this.onTrouble(NOT_SAVED));
  }

  private async now(): Promise<void> {
    clearTimeout(this.timer);
    this.timer = undefined;
    const tank = this.waiting;
    if (!tank) return;
    try {
      await saveTank(tank);
      if (this.waiting === tank) this.waiting = undefined;
    } catch {
      this.onTrouble(NOT_SAVED);
    }
  }
}
