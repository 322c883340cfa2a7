import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/season';
import type { SeasonTold } from '../../ask/outcome';
import { type Season, name, begins, value, withUnit } from './texts';
import { hasMoved, movedText, pouredTexts, unreadTexts } from './moved';
import { firstText, endsTexts, loweringTexts, insteadTexts } from './first';
import { weeklyText, weeklyTexts, promiseTexts, driftText } from './weekly';

/** The answer first, what goes with it, and the season ahead. */
export interface SeasonSentences {
  readonly headline: string;
  readonly beside: readonly string[];
  readonly more: readonly string[];
}

/** A season as the page and the command say it. */
export function seasonSentences({ question, season, isRead }: SeasonTold): SeasonSentences {
  const { why, first, weekly } = season;
  const mixedNow = question.now.waterChanges.salinityPractical;
  const moved = why.moved.filter(hasMoved).map(movedText);
  const waits = first.kind === 'alkalinityFirst';
  const past = why.span === undefined ? [say.noPast] : moved.length === 0 ? [say.steady] : moved;
  return {
    headline: [...past, firstText(first), ...(waits ? [] : [weeklyText(season, mixedNow)])].join(
      ' ',
    ),
    beside: [
      ...unreadTexts(why.moved, question.readings),
      ...pouredTexts(season.poured),
      ...(season.alkalinityLeavesDay === undefined
        ? []
        : [say.alkalinityLeaves(String(season.alkalinityLeavesDay))]),
      ...endsTexts(season),
      ...season.lowerings.flatMap(loweringTexts),
      ...(waits ? [] : [...weeklyTexts(season, mixedNow), ...promiseTexts(weekly)]),
    ],
    more: [
      ...why.moved.flatMap(({ id, since }) =>
        since && !since.differs
          ? [say.agrees(begins(name(id)), withUnit(id, since.planned), value(id, since.giveOrTake))]
          : [],
      ),
      ...season.drifts.map(driftText),
      ...insteadTexts(season),
      ...(why.span?.changes === 'planned' ? [say.changesPlanned] : []),
      ...(why.span ? [useText(why.span, isRead)] : []),
      say.notInIt,
    ],
  };
}

const useText = (
  { useDkhPerDay, useIsRead }: NonNullable<Season['why']['span']>,
  isRead: boolean,
): string =>
  useIsRead || isRead
    ? say.useRead(figure(useDkhPerDay, 2))
    : say.useAssumed(figure(useDkhPerDay, 2));
