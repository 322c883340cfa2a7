/** Errors cross as values: a thrown one would lose its fields on the way. */
export interface Failure {
  readonly code: 'outOfRange' | 'unexpected';
  readonly message: string;
}

export type Answer<T> =
  | { readonly kind: 'done'; readonly value: T; readonly tookMs: number }
  | { readonly kind: 'superseded' }
  | { readonly kind: 'failed'; readonly failure: Failure };

export const failureOf = (error: unknown): Failure => ({
  code: error instanceof RangeError ? 'outOfRange' : 'unexpected',
  message: error instanceof Error ? error.message : String(error),
});

/** Does the work and says what came of it; undefined means that it was superseded. */
export async function answering<T>(work: () => Promise<T | undefined>): Promise<Answer<T>> {
  const begun = performance.now();
  try {
    const value = await work();
    return value === undefined
      ? { kind: 'superseded' }
      : { kind: 'done', value, tookMs: performance.now() - begun };
  } catch (error) {
    return { kind: 'failed', failure: failureOf(error) };
  }
}
