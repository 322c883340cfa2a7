import type { Answer } from './answer';

/** The answer to the newest question, and whether one is on its way. */
export class Latest<T> {
  value: T | undefined = $state.raw();
  trouble = $state('');
  waiting = $state(false);

  async ask(question: () => Promise<Answer<T>>): Promise<void> {
    this.waiting = true;
    const answer = await question();
    if (answer.kind === 'superseded') return;
    this.waiting = false;
    this.trouble = answer.kind === 'failed' ? answer.failure.message : '';
    if (answer.kind === 'done') this.value = answer.value;
  }
}
