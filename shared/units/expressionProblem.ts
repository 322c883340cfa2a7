/** What is wrong with an expression, and at which character (from 0) a finger would point. */
export interface ExpressionProblem {
  readonly message: string;
  readonly at: number;
}
