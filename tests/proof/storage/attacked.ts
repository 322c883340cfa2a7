/** What came of one kind of attack on what a browser keeps. */
export interface Attacked {
  readonly attack: string;
  readonly tried: number;
  /** What did not hold, with the seed that repeats it. */
  readonly broken: readonly string[];
  /** What was measured beside it, in words. */
  readonly figures: string;
}
