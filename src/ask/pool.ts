import type { Errand } from './errand';
import { unexpected, type Answer } from './answer';
import { RemoteDesk, type WorkerLike } from './remoteDesk';

/** More than this gain little, and each takes memory. */
const MOST_WORKERS = 6;

/**
 * Workers that live as long as the page, at most one a core, each opened when first needed. The
 * first are kept for trials, so that a drag never waits for a long calculation; with one worker
 * alone, a calculation gives way to a trial and is begun again after it.
 */
export class Pool {
  /** How many errands beside trials can be worked at together. */
  readonly atOnce: number;
  private readonly desks: (RemoteDesk | undefined)[];
  private readonly kept: number;
  private readonly queue: Errand[] = [];

  constructor(
    private readonly open: () => WorkerLike,
    cores: number,
  ) {
    const size = Math.max(1, Math.min(MOST_WORKERS, Math.floor(cores) || 1));
    this.kept = size < 4 ? 1 : 2;
    this.desks = Array.from({ length: size }, () => undefined);
    this.atOnce = size;
  }

  get alive(): number {
    return this.desks.filter(Boolean).length;
  }

  take(errand: Errand): void {
    this.queue.push(errand);
    this.fill();
  }

  /** Ends an errand with this answer, wherever it stands. */
  stop(errand: Errand, answer: Answer<never>): void {
    const at = this.queue.indexOf(errand);
    if (at >= 0) this.queue.splice(at, 1);
    else if (!this.desks.some((desk) => desk?.takeBack(errand))) return;
    errand.end(answer);
  }

  /** Gives out what waits, trials first, then in its order, as far as there are places. */
  private fill(): void {
    const isTrial = ({ manner }: Errand) => manner.pace === 'trial';
    const others = this.queue.filter((errand) => !isTrial(errand));
    for (const errand of [...this.queue.filter(isTrial), ...others]) {
      const place = this.placeFor(errand);
      if (place === undefined) continue;
      const at = this.queue.indexOf(errand);
      if (at < 0) continue;
      this.queue.splice(at, 1);
      try {
        this.deskAt(place).give(errand);
      } catch (error) {
        errand.end(unexpected(error));
      }
    }
  }

  private placeFor({ manner }: Errand): number | undefined {
    const places = [...this.desks.keys()];
    const front = places.slice(0, this.kept);
    const rest = places.slice(this.kept);
    if (manner.pace === 'trial') {
      const place = front.reduce((a, b) => (this.trialsAt(b) < this.trialsAt(a) ? b : a));
      if (this.desks[place]?.isWhole) this.desks[place]?.end();
      return place;
    }
    const isFree = (place: number) => !this.desks[place]?.isTaken;
    const free = rest.find(isFree);
    if (free !== undefined) return free;
    const mayShare = manner.pace === 'runs' || rest.length === 0;
    return mayShare
      ? front.find((place) => isFree(place) && this.trialsAt(place) === 0)
      : undefined;
  }

  private trialsAt(place: number): number {
    return this.desks[place]?.trials ?? 0;
  }

  private deskAt(place: number): RemoteDesk {
    const known = this.desks[place];
    if (known) return known;
    const desk = new RemoteDesk(this.open, {
      freed: () => this.fill(),
      ended: (left) => {
        this.desks[place] = undefined;
        for (const errand of left) errand.begunMs = undefined;
        this.queue.unshift(...left);
        this.fill();
      },
    });
    this.desks[place] = desk;
    return desk;
  }
}
