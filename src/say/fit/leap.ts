import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { spokenDay, spokenTime } from '../../../shared/log/spokenTime';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import type { LogAnswer } from '../../ask/outcome';

/** Where the water stands elsewhere at once with nothing in the log to say why. */
export const leapSentences = ({ fit: { leaps, startAt } }: Pick<LogAnswer, 'fit'>): string[] =>
  leaps.map((leap) => {
    const [from, to] = [leap.beforeH, leap.afterH].map((timeH) =>
      localTimeOf(hoursOf(startAt) + timeH),
    ) as [string, string];
    const isOneDay = spokenDay(from) === spokenDay(to);
    const [before, after] = [from, to].map(isOneDay ? spokenTime : spokenDay) as [string, string];
    const told = leap.byDkh > 0 ? say.answer.leapUp : say.answer.leapDown;
    return told(before, after, figure(Math.abs(leap.byDkh), 1));
  });
