/** What is wrong with an expression of time. */
export type ExpressionFault =
  | { readonly kind: 'nothing' | 'tooLong' | 'unreadable' | 'onlyNumbers' | 'notThisKind' }
  /** A word that is not known, an operator that is not used, a function that is not called here. */
  | { readonly kind: 'unknown' | 'notUsed' | 'notCalled'; readonly name: string }
  /** Too few or too many numbers for a function; `most` is Infinity where any number will do. */
  | {
      readonly kind: 'numbersOf';
      readonly name: string;
      readonly least: number;
      readonly most: number;
      readonly given: number;
    }
  /** It leaves 0 to `most`, first on this day (the first is 1) at this hour of the clock. */
  | {
      readonly kind: 'outOfRange';
      readonly day: number;
      readonly hour: number;
      readonly value: number;
      readonly most: number;
    };

/** What is wrong with an expression, and at which character (from 0) a finger would point. */
export interface ExpressionProblem {
  readonly fault: ExpressionFault;
  readonly at: number;
}

/** An expression of a scenario that cannot be sampled. */
export interface WrongExpression {
  readonly path: string;
  readonly text: string;
  readonly problem: ExpressionProblem;
}
