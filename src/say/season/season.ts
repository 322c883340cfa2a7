import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/season';
import type { SeasonTold } from '../../ask/outcome';
import type { Around } from '../turn/known';
import { testFirst } from '../turn/testFirst';
import { type Season, name, begins, value, withUnit } from './texts';
import { hasMoved, movedText, pouredTexts, unreadTexts } from './moved';
import { firstText, endsTexts, loweringTexts, insteadTexts } from './first';
import { weeklyText, weeklyTexts, promiseTexts, driftText } from './weekly';

/** The answer first, what goes with it, and the season ahead. */
export interface SeasonSentences {
  readonly headline: string;
  readonly beside: readonly string[];
  readonly more: readonly string[];
  /** Whether a test comes before anything is poured. */
  readonly testsFirst: boolean;
}

/** A season as the page and the command say it. */
export function seasonSentences(
  { question, season, isRead }: SeasonTold,
  around: Around,
): SeasonSentences {
  const { why, first, weekly } = season;
  const mixedNow = question.now.waterChanges.salinityPractical;
  const moved = why.moved.filter(hasMoved).map(movedText);
  const waits = first.kind === 'alkalinityFirst';
  const adds = [firstText(first), ...(waits ? [] : [weeklyText(season, mixedNow)])].join(' ');
  const test = testFirst(around, adds);
  // What is not named leads nowhere.
  const isNamed = !test || test.more.length > 0;
  const unread = unreadTexts(why.moved, around.now);
  const past = why.span === undefined ? [say.noPast] : moved.length === 0 ? [say.steady] : moved;
  return {
    headline: [...past, ...unread, test?.headline ?? adds].join(' '),
    beside: [
      ...(test?.more ?? []),
      ...pouredTexts(season.poured),
      ...(season.alkalinityLeavesDay === undefined
        ? []
        : [say.alkalinityLeaves(String(season.alkalinityLeavesDay))]),
      ...(isNamed ? endsTexts(season) : []),
      ...season.lowerings.flatMap(loweringTexts),
      ...(waits || !isNamed ? [] : [...weeklyTexts(season, mixedNow), ...promiseTexts(weekly)]),
    ],
    more: [
      ...why.moved.flatMap(({ id, since }) =>
        since && !since.differs
          ? [say.agrees(begins(name(id)), withUnit(id, since.planned), value(id, since.giveOrTake))]
          : [],
      ),
      ...season.drifts.map(driftText),
      ...(isNamed ? insteadTexts(season) : []),
      ...(why.span?.changes === 'planned' ? [say.changesPlanned] : []),
      ...(why.span ? [useText(why.span, isRead)] : []),
      say.notInIt,
    ],
    testsFirst: test !== undefined,
  };
}

const useText = (
  { useDkhPerDay, useIsRead }: NonNullable<Season['why']['span']>,
  isRead: boolean,
): string =>
  useIsRead || isRead
    ? say.useRead(figure(useDkhPerDay, 2))
    : say.useAssumed(figure(useDkhPerDay, 2));
