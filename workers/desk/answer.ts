/** Errors cross as values: a thrown one would lose its fields on the way. */
export interface Failure {
  readonly code: 'outOfRange' | 'unexpected' | 'notFetched' | 'tooLong';
  readonly message: string;
}

/** What comes of a question; one is superseded by a newer one, and cancelled by who asked it. */
export type Answer<T> =
  | { readonly kind: 'done'; readonly value: T; readonly tookMs: number }
  | { readonly kind: 'superseded' }
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
    const message = error instanceof Error ? error.message : String(error);
    const code = error instanceof RangeError ? 'outOfRange' : 'unexpected';
    return { kind: 'failed', failure: { code, message } };
  }
}
