import type { Term } from './books';

/** Terms of many reactions in a row: those of reaction `c` end before `ends[c]`. */
export interface FlatTerms {
  readonly ends: Int32Array;
  readonly accounts: Int32Array;
  readonly moles: Float64Array;
}

/** Lays reactions' terms out in a row, where a loop runs through them fastest. */
export function flatTerms(reactions: readonly (readonly Term[])[]): FlatTerms {
  const terms = reactions.flat();
  let end = 0;
  return {
    ends: Int32Array.from(reactions, ({ length }) => (end += length)),
    accounts: Int32Array.from(terms, ({ index }) => index),
    moles: Float64Array.from(terms, ({ moles }) => moles),
  };
}
