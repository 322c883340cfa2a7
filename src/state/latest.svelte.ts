import type { Answer } from '../client/outcome';

/** The answer to the newest question; an older one that comes late is dropped. */
export class Latest<T> {
  value: T | undefined = $state.raw();
  trouble = $state('');
  waiting = $state(false);
  private asked = 0;

  async ask(question: () => Promise<Answer<T>>): Promise<void> {
    const own = ++this.asked;
    this.waiting = true;
    const answer = await question().catch((error: unknown): Answer<T> => ({
      kind: 'failed',
      failure: { code: 'unexpected', message: String(error) },
    }));
    if (own !== this.asked) return;
    this.waiting = false;
    this.trouble = answer.kind === 'failed' ? answer.failure.message : '';
    if (answer.kind === 'done') this.value = answer.value;
  }
}
