import { say } from '../../shared/words/asking';
import type { Errand } from './errand';
import type { Answer, FromWorker, ToWorker } from './outcome';

/** What is needed of a worker. */
export type WorkerLike = Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

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
  private unsaid: ToWorker[] | undefined = [];
  private readonly worker: WorkerLike;
  private readonly opening: ReturnType<typeof setTimeout>;

  constructor(
    open: () => WorkerLike,
    private readonly listener: Listener,
  ) {
    this.worker = open();
    this.opening = setTimeout(() => this.fail(failed('notFetched', say.notFetched)), OPENING_MS);
    this.worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) =>
      this.hear(data),
    );
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
    this.say({ kind: 'job', id, name, asked });
  }

  /** Nobody waits for an errand any more; false when it is not here. */
  takeBack({ id, manner }: Errand): boolean {
    if (!this.errands.delete(id)) return false;
    if (manner.pace === 'whole') this.end();
    else {
      this.leaving.add(id);
      this.say({ kind: 'cancel', id });
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

  private hear(message: FromWorker): void {
    if (message.kind === 'listening') {
      clearTimeout(this.opening);
      const { unsaid = [] } = this;
      this.unsaid = undefined;
      for (const early of unsaid) this.say(early);
      return;
    }
    const errand = this.errands.get(message.id);
    if (message.kind === 'told') {
      if (!errand) return;
      this.wait(errand);
      errand.tell(message.told);
      return;
    }
    this.errands.delete(message.id);
    this.leaving.delete(message.id);
    clearTimeout(this.timers.get(message.id));
    this.timers.delete(message.id);
    this.listener.freed();
    errand?.end(message.answer);
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

  private say(message: ToWorker): void {
    if (this.unsaid) {
      this.unsaid.push(message);
      return;
    }
    try {
      this.worker.postMessage(message);
    } catch (error) {
      // What cannot be copied across is an answer like any other.
      const answer = failed('unexpected', String(error));
      this.hear({ kind: 'answer', id: message.id, answer });
    }
  }
}
