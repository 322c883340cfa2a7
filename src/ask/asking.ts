import type { Errand } from './errand';
import { manners } from './manners';
import type { Answer } from './answer';
import type { AskedOf, GivenBy, QuestionName, Questions, ToldBy } from './outcome';
import type { Pool } from './pool';
import { workers } from './workers';

export type Asked<Name extends QuestionName> = AskedOf<Questions[Name]>;
export type Given<Name extends QuestionName> = GivenBy<Questions[Name]>;
type Told<Name extends QuestionName> = ToldBy<Questions[Name]>;

interface How<Name extends QuestionName> {
  /** A newer question under the same key supersedes an older; its name, if nothing else is given. */
  readonly key?: string;
  readonly tell?: (told: Told<Name>) => void;
}

/** What runs under a key, and what waits until a young one is done. */
interface Line {
  running: Errand;
  waiting?: Errand | undefined;
}

/** A trial younger than this is let finish: a drag would otherwise never see an answer. */
const LET_FINISH_MS = 150;

let errands = 0;

/** The questions of one page or panel, by key. */
export class Asking {
  private readonly lines = new Map<string, Line>();

  readonly pool: Pool;
  private readonly tooLong: string | undefined;

  /** `tooLong` says what to do where an answer takes too long, if there is more to say than that. */
  constructor({ pool = workers, tooLong }: { pool?: Pool; tooLong?: string } = {}) {
    this.pool = pool;
    this.tooLong = tooLong;
  }

  /** Asks a worker. Whatever goes wrong comes back as a value. */
  ask<Name extends QuestionName>(
    name: Name,
    asked: Asked<Name>,
    { key = name, tell }: How<Name> = {},
  ): Promise<Answer<Given<Name>>> {
    return new Promise((resolve) => {
      const errand: Errand = {
        ...{ id: ++errands, name, asked, manner: manners[name], begunMs: undefined },
        tell: (told) => tell?.(told as Told<Name>),
        end: (answer) => {
          this.ended(key, errand);
          measure(errand, answer);
          resolve(this.said(answer as Answer<Given<Name>>));
        },
      };
      this.begin(key, errand);
    });
  }

  /** Ends what was asked under a key; where it is a question shared out, every part of it. */
  cancel(key: string): void {
    for (const [own, line] of [...this.lines]) {
      if (own !== key && !own.startsWith(partKey(key, ''))) continue;
      this.lines.delete(own);
      line.waiting?.end({ kind: 'cancelled' });
      this.pool.stop(line.running, { kind: 'cancelled' });
    }
  }

  /** Ends everything: whoever asked is gone. */
  leave(): void {
    for (const key of [...this.lines.keys()]) this.cancel(key);
  }

  private begin(key: string, errand: Errand): void {
    const line = this.lines.get(key);
    if (line && isYoungTrial(line.running)) {
      line.waiting?.end({ kind: 'superseded' });
      line.waiting = errand;
      return;
    }
    this.lines.set(key, { running: errand });
    line?.waiting?.end({ kind: 'superseded' });
    if (line) this.pool.stop(line.running, { kind: 'superseded' });
    this.pool.take(errand);
  }

  private said<T>(answer: Answer<T>): Answer<T> {
    const { tooLong } = this;
    const isLong = answer.kind === 'failed' && answer.failure.code === 'tooLong';
    return isLong && tooLong
      ? { ...answer, failure: { code: 'tooLong', message: tooLong } }
      : answer;
  }

  private ended(key: string, errand: Errand): void {
    const line = this.lines.get(key);
    if (line?.running !== errand) return;
    this.lines.delete(key);
    if (!line.waiting) return;
    this.lines.set(key, { running: line.waiting });
    this.pool.take(line.waiting);
  }
}

/** The key of one part of a question that is shared out. */
export const partKey = (key: string, part: number | ''): string => `${key}#${part}`;

const isYoungTrial = ({ manner, begunMs }: Errand): boolean =>
  manner.pace === 'trial' && begunMs !== undefined && performance.now() - begunMs <= LET_FINISH_MS;

/** How long the page waited, and how long of it the worker was at it, for whoever measures. */
function measure({ name, begunMs }: Errand, answer: Answer<unknown>): void {
  if (answer.kind !== 'done' || begunMs === undefined) return;
  performance.measure(name, { start: begunMs, detail: { engineMs: answer.tookMs } });
}
