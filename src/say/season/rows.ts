import { wordFor } from '../../../shared/scenario/words';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/season';
import type { SeasonTold } from '../../ask/outcome';
import {
  type Season,
  type SeasonId,
  decimals,
  name,
  value,
  signed,
  withUnit,
  grams,
  litres,
  day,
  sharesText,
} from './texts';

/** A row of the table. */
export interface SeasonRow {
  readonly name: string;
  readonly read: string;
  readonly moved: string;
  readonly why: string;
  readonly add: string;
  readonly days: string;
}

/** Where a test comes first (`testFirst`) no amount is told. */
export const seasonRows = ({ season, question }: SeasonTold, testsFirst: boolean): SeasonRow[] =>
  season.why.moved.map(({ id, latest, since, readings }): SeasonRow => ({
    name: name(id),
    read: latest ? say.readOn(value(id, latest.value), day(latest.at)) : say.nothing,
    moved: since
      ? say.movedCell(
          withUnit(id, since.read),
          figure(since.giveOrTake, decimals(id)),
          day(since.at),
        )
      : readings > 0 || latest
        ? say.once
        : say.never,
    why: since
      ? `${say.planSays(signed(id, since.planned))}: ${sharesText(id, since.shares)}`
      : say.nothing,
    ...(testsFirst ? { add: say.testCell, days: say.nothing } : addCells(id, season, question)),
  }));

function addCells(
  id: SeasonId,
  { first, lowerings }: Season,
  { now }: SeasonTold['question'],
): Pick<SeasonRow, 'add' | 'days'> {
  const none = { add: say.enough, days: say.nothing };
  if (lowerings.some((one) => one.id === id)) return { add: say.highCell, days: say.nothing };
  if (first.kind !== 'none' && first.kind !== 'first') {
    return { add: say.refusedCell, days: say.nothing };
  }
  if (first.kind === 'none') return none;
  if (id === 'salinity') {
    return first.change && first.change.salinityPractical !== now.waterChanges.salinityPractical
      ? {
          add: `${litres(first.change.litres)} L, ${figure(first.change.salinityPractical)} ppt`,
          days: String(first.days),
        }
      : none;
  }
  const one = first.poured[id];
  return one
    ? { add: say.addCell(grams(one.gramsPerDay), wordFor(one.additive)), days: String(first.days) }
    : none;
}
