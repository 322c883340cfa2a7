import { extent } from 'd3-array';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { spokenDay, spokenTime } from '../../../shared/log/spokenTime';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import type { LogAnswer } from '../../ask/outcome';
import { signed } from '../texts';

type Leap = LogAnswer['fit']['leaps'][number];

/** More than these are told together. */
const MOST_TOLD = 2;

/** The two readings between which it was. */
function betweenOf({ beforeH, afterH }: Leap, startAt: string): [string, string] {
  const [from, to] = [beforeH, afterH].map((timeH) => localTimeOf(hoursOf(startAt) + timeH)) as [
    string,
    string,
  ];
  const spoken = spokenDay(from) === spokenDay(to) ? spokenTime : spokenDay;
  return [spoken(from), spoken(to)];
}

/** Where the water stands elsewhere at once with nothing in the log to say why. */
export function leapSentences({ fit: { leaps, startAt } }: Pick<LogAnswer, 'fit'>): string[] {
  if (leaps.length > MOST_TOLD) {
    const [low, high] = extent(leaps, ({ byDkh }) => byDkh).map((dkh) => signed(dkh!, 1));
    return [say.answer.leaps(leaps.length, low!, high!, ...betweenOf(leaps.at(-1)!, startAt))];
  }
  return leaps.map((leap) => {
    const told = leap.byDkh > 0 ? say.answer.leapUp : say.answer.leapDown;
    return told(...betweenOf(leap, startAt), figure(Math.abs(leap.byDkh), 1));
  });
}
