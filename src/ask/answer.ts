import { say } from '../../shared/words/asking';
import { sentence } from '../../shared/scenario/sentence';
import { expressionProblem } from '../say/expression';
import { stoppedSentence } from '../say/verdict/stopped';
import type { WorkedOut, WorkFailure } from './outcome';

/** Why there is no answer, in the reader's words. */
export interface Failure {
  readonly code: WorkFailure['code'] | 'notFetched' | 'tooLong';
  readonly message: string;
}

/** What comes of a question; one is superseded by a newer one, and cancelled by who asked it. */
export type Answer<T> =
  Exclude<WorkedOut<T>, { kind: 'failed' }> | { readonly kind: 'superseded' } | Failed;

type Failed = { readonly kind: 'failed'; readonly failure: Failure };

const failed = (code: Failure['code'], message: string): Failed => ({
  kind: 'failed',
  failure: { code, message },
});

export const notFetched = (): Failed => failed('notFetched', say.notFetched);
export const brokenOff = (why: string): Failed => failed('unexpected', say.broken(why));
export const tooLong = (seconds: number): Failed => failed('tooLong', say.tooLong(String(seconds)));
export const unexpected = (error: unknown): Failed =>
  failed('unexpected', error instanceof Error ? error.message : String(error));

/** What a worker answered; what went wrong is said here. */
export const heard = <T>(answer: WorkedOut<T>): Answer<T> =>
  answer.kind === 'failed' ? failed(answer.failure.code, failureText(answer.failure)) : answer;

function failureText(failure: WorkFailure): string {
  switch (failure.code) {
    case 'leftRange':
      return stoppedSentence(failure.stopped);
    case 'unreadExpressions':
      return failure.wrong.map((one) => sentence(expressionProblem(one))).join(' ');
    default:
      return failure.complaint;
  }
}
