import type { WrongExpression } from '../../shared/units/expressionProblem';

/** Expressions of time that cannot be read. */
export class UnreadExpressions extends RangeError {
  constructor(readonly wrong: readonly WrongExpression[]) {
    super(wrong.map(({ path, problem }) => `${path}: ${problem.fault.kind}`).join(', '));
  }
}
