import * as Comlink from 'comlink';
import { answering, type Answer } from './answer';
import { buffersOf } from './handOver';
import { letMessagesIn } from './letMessagesIn';
import type { Question } from './question';

/** Finds the question of a name; it may have to be fetched. */
type Find = (name: string) => Promise<Question<unknown, unknown, unknown>>;

/** A question on its way to a worker. */
export interface JobAsked {
  readonly id: number;
  readonly name: string;
  readonly asked: unknown;
}

/** The jobs of one worker. Those that let messages in run side by side; a cancel ends one of them. */
export class Desk {
  private readonly wanted = new Set<number>();

  constructor(private readonly find: Find) {}

  /** What comes of a question, as a value; what it hands over is moved across, not copied. */
  async work(
    { id, name, asked }: JobAsked,
    hear: (told: unknown) => void,
  ): Promise<Answer<unknown>> {
    this.wanted.add(id);
    const isWanted = () => this.wanted.has(id);
    const goesOn = async () => {
      await letMessagesIn();
      return isWanted();
    };
    const tell = (told: unknown) => {
      if (isWanted()) hear(moved(told));
    };
    const answer = await answering(async () => (await this.find(name))(asked, { goesOn, tell }));
    this.wanted.delete(id);
    letGo(hear);
    return answer.kind === 'done' ? Comlink.transfer(answer, buffersOf(answer.value)) : answer;
  }

  /** Nobody waits for this any more. */
  cancel(id: number): void {
    this.wanted.delete(id);
  }
}

/** Of a page's function only the proxy is here: its port is closed. */
const letGo = (hear: unknown): void =>
  (hear as Partial<Comlink.ProxyMethods>)[Comlink.releaseProxy]?.();

const moved = <T>(told: T): T =>
  told instanceof Object ? Comlink.transfer(told, buffersOf(told)) : told;
