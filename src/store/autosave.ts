import { say } from '../../shared/words/saving';
import { leaveBehind, takeBack } from './leaving';
import type { Tank } from './tanks';

/** What is not saved is tried again so much later. */
const AGAIN_MS = 5000;

/** During a drag something is written this often, not only when it ends. */
const SAVE_EVERY_MS = 250;

/** What a first picture does not need is fetched a moment later. */
const store = () => import('./store');

/** Whether a newer Paper Reef has taken the database over. */
const isNewer = (error: unknown): boolean =>
  (error as Partial<Error> | undefined)?.name === 'VersionError';

const notSaved = (error: unknown): string => (isNewer(error) ? say.newerHere : say.failed);

export type Rebase = (step: Tank, shown: Tank, now: Tank) => Tank;

export interface SaveListener {
  /** What there is to be told; nothing once all is saved after all. */
  trouble(notice: string): void;
  /** A tank as another window has it, or as it became when both were put together; and what makes of a step taken here one that knows it. */
  changedElsewhere(tank: Tank, onto: Rebase): void;
  /** Another window has removed it. */
  removedElsewhere(id: string): void;
}

/** Writes each tank a moment after it changed; never before what was saved has been read. */
export class Autosave {
  private restored = false;
  /** What was saved has not been read yet, and may be. */
  private isReading = true;
  /** Changed and not yet in the database. */
  private readonly waiting = new Map<string, Tank>();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private isTroubled = false;
  /** What other windows have saved since this one began to read. */
  private readonly missed = new Set<string>();
  private writing: Promise<void> = Promise.resolve();
  /** Each tank as this window last read or wrote it. */
  private readonly bases = new Map<string, Tank>();
  private readonly windows = new BroadcastChannel('paper-reef');

  constructor(private readonly listener: SaveListener) {
    this.windows.onmessage = ({ data }) => this.hear(String(data));
  }

  /** What was saved last, if anything, in the place of what is shown till then; while that cannot be read nothing is written over it. */
  async restore(shown?: string): Promise<readonly Tank[]> {
    try {
      const { loadTanks } = await store();
      const { tanks, setAside } = await loadTanks();
      if (setAside) this.listener.trouble(say.setAside);
      for (const tank of tanks) this.bases.set(tank.id, tank);
      this.restored = true;
      for (const id of this.missed) this.hear(id);
      // What was changed while nothing was there to be read is the first to be kept.
      if (tanks.length > 0 && shown) this.waiting.delete(shown);
      if (this.waiting.size > 0) this.timer = setTimeout(() => this.now(), SAVE_EVERY_MS);
      return tanks;
    } catch (error) {
      this.listener.trouble(isNewer(error) ? say.newerHere : say.keepsNothing);
      return [];
    } finally {
      this.isReading = false;
    }
  }

  /** A tank that is new here; whatever another window makes of one of the same name began alike. */
  begin(tank: Tank): void {
    if (!this.bases.has(tank.id)) this.bases.set(tank.id, tank);
  }

  /** A reading is saved at once; what is dragged, a moment later. */
  soon(tank: Tank, afterMs = SAVE_EVERY_MS): void {
    this.waiting.set(tank.id, tank);
    if (!this.restored) return;
    if (afterMs === 0) clearTimeout(this.timer);
    else if (this.timer) return;
    this.timer = setTimeout(() => this.now(), afterMs);
  }

  /** The page is going away, too soon for the database: what waits is left where it can be found. */
  beforeLeaving(): void {
    for (const tank of this.waiting.values()) {
      const base = this.bases.get(tank.id);
      if (this.restored) leaveBehind(tank, base);
      // What was typed before the store had answered is a reading: a lever was turned on no tank of anyone's.
      else if (this.isReading && base) leaveBehind({ ...tank, bench: base.bench }, base);
    }
  }

  /** In turn with what is being written: a tank that is brought back is saved after it went. */
  remove(id: string): Promise<void> {
    this.waiting.delete(id);
    this.writing = this.writing.then(async () => {
      try {
        const known = this.bases.get(id);
        // What is there when it is brought back another window has put there: neither then misses a reading.
        this.bases.delete(id);
        if (await (await store()).removeTank(id, known)) {
          this.listener.trouble(say.removedAside(known?.name ?? id));
        }
        this.windows.postMessage(id);
      } catch (error) {
        this.listener.trouble(notSaved(error));
      }
    });
    return this.writing;
  }

  private now(): void {
    this.timer = undefined;
    for (const id of this.waiting.keys()) {
      this.writing = this.writing.then(() => this.write(id));
    }
  }

  private async write(id: string): Promise<void> {
    const tank = this.waiting.get(id);
    // Written with an earlier turn, or removed.
    if (!tank) return;
    try {
      const { saveTank } = await store();
      const { tank: saved, aside, setAside } = await saveTank(tank, this.bases.get(tank.id));
      this.bases.set(saved.id, saved);
      if (this.waiting.get(tank.id) === tank) this.waiting.delete(tank.id);
      takeBack(tank.id);
      this.windows.postMessage(saved.id);
      if (this.isTroubled) this.listener.trouble('');
      this.isTroubled = false;
      if (saved.bench !== tank.bench || saved.log !== tank.log) await this.showMerged(tank, saved);
      if (setAside) this.listener.trouble(say.setAside);
      if (aside) {
        this.bases.set(aside.id, aside);
        this.windows.postMessage(aside.id);
        this.listener.changedElsewhere(aside, (step) => step);
        this.listener.trouble(say.otherWindow(aside.name));
      }
    } catch (error) {
      this.listener.trouble(notSaved(error));
      this.isTroubled = true;
      if (!isNewer(error)) this.timer ??= setTimeout(() => this.now(), AGAIN_MS);
    }
  }

  /** What was changed here while it was written goes on from what both windows have made. */
  private async showMerged(written: Tank, saved: Tank): Promise<void> {
    const { mergeTanks, rebased } = await store();
    const since = this.waiting.get(saved.id);
    const now = since ? mergeTanks(written, since, saved).tank : saved;
    if (since) this.waiting.set(saved.id, now);
    this.listener.changedElsewhere(now, rebased);
  }

  /** Another window has saved: shown here, unless something of ours waits, which then is merged. */
  private hear(id: string): void {
    if (!this.restored) this.missed.add(id);
    // In turn with what is written here: what was read before that, and came after it, would be older.
    else this.writing = this.writing.then(() => this.read(id));
  }

  private async read(id: string): Promise<void> {
    if (this.waiting.has(id)) return;
    const found = await store()
      .then(async ({ readSaved, rebased }) => ({ tank: await readSaved(id), rebased }))
      .catch(() => undefined);
    if (!found?.tank || this.waiting.has(id)) return;
    const { tank, rebased } = found;
    if (tank === 'gone') {
      this.bases.delete(id);
      return this.listener.removedElsewhere(id);
    }
    this.bases.set(id, tank);
    this.listener.changedElsewhere(tank, rebased);
  }
}
