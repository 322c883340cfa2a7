import { say } from '../../shared/words/saving';
import { leaveBehind, takeBack } from './leaving';
import { mergeTanks } from './mergeTanks';
import type { Tank } from './tanks';

/** During a drag something is written this often, not only when it ends. */
const SAVE_EVERY_MS = 250;

/** What a first picture does not need is fetched a moment later. */
const store = () => import('./store');

/** Whether a newer Paper Reef has taken the database over. */
const isNewer = (error: unknown): boolean =>
  (error as Partial<Error> | undefined)?.name === 'VersionError';

const notSaved = (error: unknown): string => (isNewer(error) ? say.newerHere : say.failed);

export interface SaveListener {
  trouble(notice: string): void;
  /** A tank as another window has it, or as it became when both were put together. */
  changedElsewhere(tank: Tank): void;
}

/** Writes each tank a moment after it changed; never before what was saved has been read. */
export class Autosave {
  private restored = false;
  /** Changed and not yet in the database. */
  private readonly waiting = new Map<string, Tank>();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private writing: Promise<void> = Promise.resolve();
  /** Each tank as this window last read or wrote it. */
  private readonly bases = new Map<string, Tank>();
  private readonly windows = new BroadcastChannel('paper-reef');

  constructor(private readonly listener: SaveListener) {
    this.windows.onmessage = ({ data }) => void this.hear(String(data));
  }

  /** What was saved last, if anything; while that cannot be read nothing is written over it. */
  async restore(): Promise<readonly Tank[]> {
    try {
      const { loadTanks } = await store();
      const { tanks, setAside } = await loadTanks();
      if (setAside) this.listener.trouble(say.setAside);
      for (const tank of tanks) this.bases.set(tank.id, tank);
      this.restored = true;
      // What was changed while nothing was there to be read is the first to be kept.
      if (tanks.length > 0) this.waiting.clear();
      else if (this.waiting.size > 0) this.timer = setTimeout(() => this.now(), SAVE_EVERY_MS);
      return tanks;
    } catch (error) {
      this.listener.trouble(isNewer(error) ? say.newerHere : say.keepsNothing);
      return [];
    }
  }

  /** A tank that is new here; whatever another window makes of one of the same name began alike. */
  begin(tank: Tank): void {
    if (!this.bases.has(tank.id)) this.bases.set(tank.id, tank);
  }

  soon(tank: Tank): void {
    this.waiting.set(tank.id, tank);
    if (this.restored) this.timer ??= setTimeout(() => this.now(), SAVE_EVERY_MS);
  }

  /** The page is going away, too soon for the database: what waits is left where it can be found. */
  beforeLeaving(): void {
    if (!this.restored) return;
    for (const tank of this.waiting.values()) leaveBehind(tank, this.bases.get(tank.id));
  }

  /** In turn with what is being written: a tank that is brought back is saved after it went. */
  remove(id: string): Promise<void> {
    this.waiting.delete(id);
    this.writing = this.writing.then(() =>
      store()
        .then(({ removeTank }) => removeTank(id))
        .catch((error: unknown) => this.listener.trouble(notSaved(error))),
    );
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
      if (saved.bench !== tank.bench || saved.log !== tank.log) this.showMerged(tank, saved);
      if (setAside) this.listener.trouble(say.setAside);
      if (aside) {
        this.bases.set(aside.id, aside);
        this.listener.changedElsewhere(aside);
        this.listener.trouble(say.otherWindow(aside.name));
      }
    } catch (error) {
      this.listener.trouble(notSaved(error));
    }
  }

  /** What was changed here while it was written goes on from what both windows have made. */
  private showMerged(written: Tank, saved: Tank): void {
    const since = this.waiting.get(saved.id);
    const now = since ? mergeTanks(written, since, saved).tank : saved;
    if (since) this.waiting.set(saved.id, now);
    this.listener.changedElsewhere(now);
  }

  /** Another window has saved: shown here, unless something of ours waits, which then is merged. */
  private async hear(id: string): Promise<void> {
    if (!this.restored || this.waiting.has(id)) return;
    await this.writing;
    const tank = await store()
      .then(({ readSaved }) => readSaved(id))
      .catch(() => undefined);
    if (!tank || this.waiting.has(id)) return;
    this.bases.set(id, tank);
    this.listener.changedElsewhere(tank);
  }
}
