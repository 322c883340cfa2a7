import { newestOf } from '../../../shared/log/newest';
import { spokenDay } from '../../../shared/log/spokenTime';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold } from '../../ask/outcome';
import { isUntold } from '../../ask/isUntold';
import { waitsFor, type Around } from '../turn/known';
import { dkh, filled, percent } from './texts';
import { tooFullText, runsOutText } from './vessel';
import { provisionText, harmsSentence } from './provision';
import { whyNot, wayOutText } from './whyNot';
import { keptText, insideText, oddsTexts } from './odds';

/** The answer in a sentence or two; what does harm all at once first. */
const headline = (told: AwayTold): string =>
  [harmsSentence(told.away), answerText(told)].filter((text) => text !== '').join(' ');

function answerText(told: AwayTold): string {
  const { question, away } = told;
  const { asked, provided, wayOut, days, comesDays } = away;
  const { why, day } = whyNot(asked ?? provided);
  if (wayOut) return say.leaves(days, why, String(day), wayOutText(away));
  if (asked) return say.onlyVisited(days, why, String(day), comesDays);
  return keptText(question, away, provisionText(told));
}

/** Vessels in which may not stand all that may be needed, and from which level that is reckoned. */
function fullestTexts({ question, away }: AwayTold): string[] {
  const told = away.vessels.flatMap((vessel) => tooFullText(vessel, question.now));
  return told.length > 0 ? [...told, say.fromNow(dkh(question.now.tank.alkalinityDkh))] : [];
}

/** What stands on no reading, or on one too old to leave by. */
function assumedText({ question, isRead }: AwayTold, around: Around): string[] {
  const newest = newestOf(around.readings, 'alkalinityDkh');
  const { corals, tank } = question.now;
  const by = question.giveOrTakeDkhPerDay;
  return [
    ...(newest ? [] : [say.assumedLevel(dkh(tank.alkalinityDkh))]),
    ...(newest && waitsFor(around) === 'test'
      ? [say.oldLevel(spokenDay(newest.at), dkh(tank.alkalinityDkh))]
      : []),
    ...(waitsFor(around) === 'leapt' ? [say.leapt] : []),
    ...(around.answer && isUntold(around.answer) ? [say.untold] : []),
    ...(isRead ? [] : [say.assumedUse(figure(corals.useDkhPerDay, 2), figure(by, 2))]),
  ];
}

/** The answer first, what has to be known beside it, and what may be asked of it. */
export interface AwaySentences {
  readonly headline: string;
  readonly beside: readonly string[];
  readonly more: readonly string[];
}

/** Days away, as the page and the command say them. */
export function awaySentences(asked: AwayTold, around: Around): AwaySentences {
  const { away } = asked;
  const { evaporation, delivery } = away.margins;
  return {
    headline: headline(asked),
    beside: [
      ...(away.wayOut ? [say.wayOut.best(provisionText(asked))] : []),
      ...(away.asked && !away.wayOut ? [keptText(asked.question, away, provisionText(asked))] : []),
      ...assumedText(asked, around),
      ...fullestTexts(asked),
      ...away.vessels
        .filter(({ hasL, dailyL }) => hasL === 0 && dailyL > 0)
        .map(({ dailyL }) => say.noTopOff(filled(dailyL))),
      ...insideText(asked),
      ...oddsTexts(asked),
      ...((around.answer?.habits.doses.length ?? 0) > 0 ? [say.handDoses] : []),
      say.notInIt,
    ],
    more: [
      ...away.vessels.flatMap(runsOutText),
      say.margin(percent(evaporation), percent(delivery)),
      say.oddsFrom,
    ],
  };
}
