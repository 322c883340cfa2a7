import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import type { Unanswered } from '../../ask/outcome';

/** Why a log says nothing yet. */
export function unansweredSentence(unanswered: Unanswered): string {
  switch (unanswered.why) {
    case 'notConverged':
      return say.notConverged;
    case 'tooFar': {
      const { days, first, last } = unanswered;
      return say.tooFar(figure(days, 0), first, last);
    }
    case 'tooClose':
      return say.tooLittle.tooClose(figure(unanswered.hours, 0));
    default:
      return say.tooLittle[unanswered.why];
  }
}
