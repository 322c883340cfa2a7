import { answering } from './answer';
import { buffersOf } from './handOver';
import { letMessagesIn } from './letMessagesIn';
import type { FromWorker, Post, ToWorker } from './messages';
import type { Question } from './question';

/** Finds the question of a name; it may have to be fetched. */
type Find = (name: string) => Promise<Question<unknown, unknown, unknown>>;

/** The jobs of one worker. Those that let messages in run side by side; a cancel ends one of them. */
export class Desk {
  private readonly wanted = new Set<number>();

  constructor(
    private readonly find: Find,
    private readonly post: Post<FromWorker>,
  ) {}

  take(message: ToWorker): void {
    if (message.kind === 'cancel') this.wanted.delete(message.id);
    else void this.work(message);
  }

  private async work({ id, name, asked }: ToWorker & { kind: 'job' }): Promise<void> {
    this.wanted.add(id);
    const isWanted = () => this.wanted.has(id);
    const goesOn = async () => {
      await letMessagesIn();
      return isWanted();
    };
    const tell = (told: unknown) => {
      if (isWanted()) this.post.postMessage({ kind: 'told', id, told }, buffersOf(told));
    };
    const answer = await answering(async () => (await this.find(name))(asked, { goesOn, tell }));
    this.wanted.delete(id);
    try {
      const buffers = answer.kind === 'done' ? buffersOf(answer.value) : [];
      this.post.postMessage({ kind: 'answer', id, answer }, buffers);
    } catch (error) {
      // What cannot be copied across is an answer like any other.
      const failure = { code: 'unexpected', message: String(error) } as const;
      this.post.postMessage({ kind: 'answer', id, answer: { kind: 'failed', failure } }, []);
    }
  }
}
