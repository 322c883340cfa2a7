import { say as words } from '../../shared/words/shelf';
import { mergeTanks } from './mergeTanks';
import { keepForNextVisit, loadTanks, readSaved, removeTank, saveTank } from './store';
import type { Tank } from './tanks';

/** During a drag something is written this often, not only when it ends. */
const SAVE_EVERY_MS = 250;
const NOT_SAVED = words.saving.failed;

export interface SaveListener {
  trouble(notice: string): void;
  /** A tank as another window has it, or as it became when both were put together. */
  changedElsewhere(tank: Tank): void;
}

/** Writes a tank a moment after each change; never before what was saved has been read. */
export class Autosave {
  private restored = false;
  private waiting: Tank | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private writing: Promise<void> = Promise.resolve();
  /** Each tank as this window last read or wrote it. */
  private readonly bases = new Map<string, Tank>();
  private readonly windows = new BroadcastChannel('paper-reef');

  constructor(private readonly listener: SaveListener) {
    this.windows.onmessage = ({ data }) => void this.hear(String(data));
  }

  /** What was saved last, if anything. */
  async restore(): Promise<readonly Tank[]> {
    try {
      const { tanks, setAside } = await loadTanks();
      if (setAside) {
        this.listener.trouble(words.saving.setAside);
      }
      for (const tank of tanks) this.bases.set(tank.id, tank);
      return tanks;
    } catch {
      this.listener.trouble(words.saving.keepsNothing);
      return [];
    } finally {
      this.restored = true;
    }
  }

  /** A tank that is new here; whatever another window makes of one of the same name began alike. */
  begin(tank: Tank): void {
    if (!this.bases.has(tank.id)) this.bases.set(tank.id, tank);
  }

  soon(tank: Tank): void {
    if (!this.restored) return;
    if (this.waiting && this.waiting.id !== tank.id) this.now();
    this.waiting = tank;
    this.timer ??= setTimeout(() => this.now(), SAVE_EVERY_MS);
  }

  /** The page is going away, too soon for the database: what waits is left where it can be found. */
  beforeLeaving(): void {
    if (!this.waiting) return;
    const edition = this.bases.get(this.waiting.id)?.edition;
    keepForNextVisit({ ...this.waiting, ...(edition !== undefined && { edition }) });
  }

  async remove(id: string): Promise<void> {
    if (this.waiting?.id === id) this.waiting = undefined;
    await removeTank(id).catch(() => this.listener.trouble(NOT_SAVED));
  }

  private now(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    const tank = this.waiting;
    if (tank) this.writing = this.writing.then(() => this.write(tank));
  }

  private async write(tank: Tank): Promise<void> {
    try {
      const { tank: saved, aside } = await saveTank(tank, this.bases.get(tank.id));
      this.bases.set(saved.id, saved);
      if (this.waiting === tank) this.waiting = undefined;
      this.windows.postMessage(saved.id);
      if (saved.bench !== tank.bench || saved.log !== tank.log) this.showMerged(tank, saved);
      if (aside) {
        this.listener.changedElsewhere(aside);
        this.listener.trouble(words.saving.otherWindow(aside.name));
      }
    } catch {
      this.listener.trouble(NOT_SAVED);
    }
  }

  /** What was changed here while it was written goes on from what both windows have made. */
  private showMerged(written: Tank, saved: Tank): void {
    if (this.waiting?.id === saved.id) {
      this.waiting = mergeTanks(written, this.waiting, saved).tank;
    }
    this.listener.changedElsewhere(this.waiting?.id === saved.id ? this.waiting : saved);
  }

  /** Another window has saved: shown here, unless something of ours waits, which then is merged. */
  private async hear(id: string): Promise<void> {
    if (!this.restored || this.waiting?.id === id) return;
    await this.writing;
    const tank = await readSaved(id).catch(() => undefined);
    if (!tank || this.waiting?.id === id) return;
    this.bases.set(id, tank);
    this.listener.changedElsewhere(tank);
  }
}
