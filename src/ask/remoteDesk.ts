import * as Comlink from 'comlink';
import { say } from '../../shared/words/asking';
import type { Errand } from './errand';
import type { Answer, Desk } from './outcome';

/** What is needed of a worker. */
export type WorkerLike = Pick<
  Worker,
  'postMessage' | 'terminate' | 'addEventListener' | 'removeEventListener'
>;

/** A worker's script that is not there after this long will not come. */
const OPENING_MS = 30_000;

interface Listener {
  /** An errand is over, or its worker has let go of it. */
  freed(): void;
  /** The worker is of no use any more; these errands were not answered. */
  ended(left: readonly Errand[]): void;
}

type Failed = Extract<Answer<never>, { kind: 'failed' }>;
const failed = (code: Failed['failure']['code'], message: string): Failed => ({
  kind: 'failed',
  failure: { code, message },
});

/** One worker as the page sees it: the errands that it has, and the wait for its word. */
export class RemoteDesk {
  private readonly errands = new Map<number, Errand>();
  /** Errands that nobody waits for any more, until the worker has let go of them. */
  private readonly leaving = new Set<number>();
  private readonly timers = new Map<number, ReturnType<typeof setTimeout>>();
  /** What was said before the worker listened; undefined once it does. */
  private unsaid: (() => void)[] | undefined = [];
  private readonly worker: WorkerLike;
  private readonly desk: Comlink.Remote<Desk>;
  private readonly opening: ReturnType<typeof setTimeout>;

  constructor(
    open: () => WorkerLike,
    private readonly listener: Listener,
  ) {
    this.worker = open();
    this.opening = setTimeout(() => this.fail(failed('notFetched', say.notFetched)), OPENING_MS);
    this.desk = Comlink.wrap<Desk>(this.worker);
    this.worker.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      if (data === 'listening') this.listening();
    });
    this.worker.addEventListener('error', (event: ErrorEvent) => {
      const isOpen = this.unsaid === undefined;
      this.fail(
        isOpen
          ? failed('unexpected', say.broken(event.message ?? ''))
          : failed('notFetched', say.notFetched),
      );
    });
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
    this.say(() => {
      void this.desk.work({ id, name, asked }, hear).then(
        (answer) => this.answered(id, answer),
        // What cannot be copied across is an answer like any other.
        (error: unknown) => this.answered(id, failed('unexpected', String(error))),
      );
    });
  }

  /** Nobody waits for an errand any more; false when it is not here. */
  takeBack({ id, manner }: Errand): boolean {
    if (!this.errands.delete(id)) return false;
    if (manner.pace === 'whole') this.end();
    else {
      this.leaving.add(id);
      this.say(() => void this.desk.cancel(id));
    }
    return true;
  }

  /** Ends the worker; what it had and still has to be answered is given back. */
  end(): void {
    clearTimeout(this.opening);
    for (const timer of this.timers.values()) clearTimeout(timer);
    this.worker.terminate();
    const left = [...this.errands.values()];
    this.errands.clear();
    this.listener.ended(left);
  }

  private fail(answer: Failed): void {
    const left = [...this.errands.values()];
    this.errands.clear();
    this.end();
    for (const { end } of left) end(answer);
  }

  private listening(): void {
    clearTimeout(this.opening);
    const { unsaid = [] } = this;
    this.unsaid = undefined;
    for (const say of unsaid) say();
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
      const seconds = String(manner.patienceMs / 1000);
      if (isWaitedFor) end(failed('tooLong', say.tooLong(seconds)));
    };
    this.timers.set(id, setTimeout(stop, manner.patienceMs));
  }

  private say(say: () => void): void {
    if (this.unsaid) this.unsaid.push(say);
    else say();
  }
}
