import type * as Comlink from 'comlink';
import { say } from '../../shared/words/fit';
import type { Answer, LogDesk } from '../../workers/trial.worker';
import { openWorker } from './openDoor';

type Desk = Comlink.Remote<LogDesk>;

/** Longer than this a keeper does not wait. */
const MOST_MS = 30_000;

interface Line {
  readonly desk: Promise<Desk>;
  readonly end: () => void;
}

/** What is asked of a test log; each kind of question has a worker of its own while it is asked. */
export class LogClient {
  private readonly lines = new Map<string, Line>();
  private readonly running = new Map<string, (answer: Answer<never>) => void>();

  /** Asks; a newer question of the same kind, or too long a wait, ends the work where it stands. */
  async ask<T>(kind: string, question: (desk: Desk) => Promise<Answer<T>>): Promise<Answer<T>> {
    this.end(kind, { kind: 'superseded' });
    const ended = new Promise<Answer<never>>((resolve) => this.running.set(kind, resolve));
    const own = this.running.get(kind)!;
    const failure = { code: 'outOfRange', message: say.tooLong } as const;
    const timer = setTimeout(() => {
      if (this.running.get(kind) === own) this.end(kind, { kind: 'failed', failure });
    }, MOST_MS);
    try {
      return await Promise.race([this.lineOf(kind).desk.then(question), ended]);
    } finally {
      clearTimeout(timer);
      if (this.running.get(kind) === own) this.running.delete(kind);
    }
  }

  /** Ends a question of this kind that still runs; nothing comes of it. */
  cancel(kind: string): void {
    this.end(kind, { kind: 'superseded' });
  }

  /** Ends what runs; a worker that is at rest stays for the next question. */
  private end(kind: string, answer: Answer<never>): void {
    const resolve = this.running.get(kind);
    if (!resolve) return;
    this.running.delete(kind);
    this.lines.get(kind)?.end();
    this.lines.delete(kind);
    resolve(answer);
  }

  private lineOf(kind: string): Line {
    const known = this.lines.get(kind);
    if (known) return known;
    const opened = openWorker();
    const desk = opened.then(({ door }) => door.log()) as unknown as Promise<Desk>;
    const line = { desk, end: () => void opened.then(({ end }) => end()) };
    this.lines.set(kind, line);
    return line;
  }
}
