import type { WrongExpression } from '../../shared/units/expressionProblem';
import type { Stopped } from '../../shared/verdict/outcome';
import { LeftRange } from '../engine/leftRange';
import { UnreadExpressions } from '../engine/unreadExpressions';

/** Errors cross as values: a thrown one would lose its fields on the way. */
export type Failure =
  /** The tank left the chemistry's range where it had to go on. */
  | { readonly code: 'leftRange'; readonly stopped: Stopped }
  /** Expressions of time that cannot be read. */
  | { readonly code: 'unreadExpressions'; readonly wrong: readonly WrongExpression[] }
  /** What nobody foresaw, as it was thrown. */
  | { readonly code: 'outOfRange' | 'unexpected'; readonly complaint: string };

/** What comes of a question that is worked at; one that is no longer wanted is cancelled. */
export type Answer<T> =
  | { readonly kind: 'done'; readonly value: T; readonly tookMs: number }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly failure: Failure };

/** Does the work and says what came of it; undefined means that it is no longer wanted. */
export async function answering<T>(
  work: () => Promise<T | undefined> | T | undefined,
): Promise<Answer<T>> {
  const begun = performance.now();
  try {
    const value = await work();
    return value === undefined
      ? { kind: 'cancelled' }
      : { kind: 'done', value, tookMs: performance.now() - begun };
  } catch (error) {
    return { kind: 'failed', failure: failureOf(error) };
  }
}

function failureOf(error: unknown): Failure {
  if (error instanceof LeftRange) {
    const { timeH, why } = error;
    return { code: 'leftRange', stopped: { timeH, why } };
  }
  if (error instanceof UnreadExpressions) return { code: 'unreadExpressions', wrong: error.wrong };
  const complaint = error instanceof Error ? error.message : String(error);
  return { code: error instanceof RangeError ? 'outOfRange' : 'unexpected', complaint };
}
