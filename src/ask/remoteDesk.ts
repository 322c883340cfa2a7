import * as Comlink from 'comlink';
import { brokenOff, heard, notFetched, tooLong, unexpected, type Answer } from './answer';
import type { Errand } from './errand';
import type { Desk } from './outcome';

/** What is needed of a worker. */
export type WorkerLike = Pick<
  Worker,
  'postMessage' | 'terminate' | 'addEventListener' | 'removeEventListener'
>;

interface Listener {
  /** An errand is over, or its worker has let go of it. */
  freed(): void;
  /** The worker is of no use any more; these errands were not answered. */
  ended(left: readonly Errand[]): void;
}

/** One worker as the page sees it: the errands that it has, and the wait for its word. */
export class RemoteDesk {
  private readonly errands = new Map<number, Errand>();
  /** Errands that nobody waits for any more, until the worker has let go of them. */
  private readonly leaving = new Set<number>();
  private readonly timers = new Map<number, ReturnType<typeof setTimeout>>();
  private readonly worker: WorkerLike;
  private readonly desk: Comlink.Remote<Desk>;

  constructor(
    open: () => WorkerLike,
    private readonly listener: Listener,
  ) {
    this.worker = open();
    this.desk = Comlink.wrap<Desk>(this.worker);
    // A script that cannot be fetched is an event without a message.
    this.worker.addEventListener('error', ({ message }: Partial<ErrorEvent>) =>
      this.fail(message === undefined ? notFetched() : brokenOff(message)),
    );
  }

  get trials(): number {
    return [...this.errands.values()].filter(({ manner }) => manner.pace === 'trial').length;
  }
  /** Whether something is at work here beside trials. */
  get isTaken(): boolean {
    return this.leaving.size > 0 || this.errands.size > this.trials;
  }
  get isWhole(): boolean {
    return [...this.errands.values()].some(({ manner }) => manner.pace === 'whole');
  }

  give(errand: Errand): void {
    const { id, name, asked } = errand;
    errand.begunMs = performance.now();
    this.errands.set(id, errand);
    this.wait(errand);
    const hear = Comlink.proxy((told: unknown) => this.told(id, told));
    void this.desk.work({ id, name, asked }, hear).then(
      (answer) => this.answered(id, heard(answer)),
      // What cannot be copied across is an answer like any other.
      (error: unknown) => this.answered(id, unexpected(String(error))),
    );
  }

  /** Nobody waits for an errand any more; false when it is not here. */
  takeBack({ id, manner }: Errand): boolean {
    if (!this.errands.delete(id)) return false;
    if (manner.pace === 'whole') this.end();
    else {
      this.leaving.add(id);
      void this.desk.cancel(id);
    }
    return true;
  }

  /** Ends the worker; what it had and still has to be answered is given back. */
  end(): void {
    for (const timer of this.timers.values()) clearTimeout(timer);
    this.worker.terminate();
    const left = [...this.errands.values()];
    this.errands.clear();
    this.listener.ended(left);
  }

  private fail(answer: Answer<never>): void {
    const left = [...this.errands.values()];
    this.errands.clear();
    this.end();
    for (const { end } of left) end(answer);
  }

  private told(id: number, told: unknown): void {
    const errand = this.errands.get(id);
    if (!errand) return;
    this.wait(errand);
    errand.tell(told);
  }

  private answered(id: number, answer: Answer<unknown>): void {
    const errand = this.errands.get(id);
    this.errands.delete(id);
    this.leaving.delete(id);
    clearTimeout(this.timers.get(id));
    this.timers.delete(id);
    this.listener.freed();
    errand?.end(answer);
  }

  /** So long the worker may be silent about an errand; then it is ended. */
  private wait(errand: Errand): void {
    const { id, manner, end } = errand;
    clearTimeout(this.timers.get(id));
    const stop = () => {
      const isWaitedFor = this.errands.delete(id);
      this.end();
      if (isWaitedFor) end(tooLong(manner.patienceMs / 1000));
    };
    this.timers.set(id, setTimeout(stop, manner.patienceMs));
  }
}
