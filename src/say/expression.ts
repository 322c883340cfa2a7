import type { Problem } from '../../shared/scenario/problem';
import type { ExpressionFault, WrongExpression } from '../../shared/units/expressionProblem';
import { timeFunctions } from '../../shared/units/timeFunctions';
import { say } from '../../shared/words/problems';

const { expression: told } = say;

/** What is wrong with an expression of time, and what may stand there instead. */
export function faultSentence(fault: ExpressionFault): string {
  switch (fault.kind) {
    case 'nothing':
    case 'tooLong':
      return told[fault.kind];
    case 'numbersOf': {
      const { name, least, most, given } = fault;
      const range = least === most ? String(least) : `${least}–${most === Infinity ? '…' : most}`;
      return told.numbersOf(name, range, String(given));
    }
    case 'outOfRange': {
      const [day, hour, value, most] = [fault.day, fault.hour, fault.value, fault.most].map(String);
      return told.outOfRange(day!, hour!, value!, most!);
    }
    default: {
      const wrong = 'name' in fault ? told[fault.kind](fault.name) : told[fault.kind];
      return `${wrong} ${told.allowed(Object.keys(timeFunctions).join(', '))}`;
    }
  }
}

/** An expression of a scenario that cannot be sampled, as a problem of that scenario. */
export const expressionProblem = ({ path, text, problem }: WrongExpression): Problem => ({
  ...{ path, what: told.what, expected: told.expected },
  got: told.wrongAt(text, String(problem.at + 1)),
  wayOut: faultSentence(problem.fault),
});
