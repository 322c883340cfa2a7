import type { SeasonTold } from '../../workers/desk/logQuestions';
import type { First } from '../../workers/studies/season/firstDays';
import type { Lowering } from '../../workers/studies/season/lowering';
import type { Passed } from '../../workers/studies/season/seasonTank';
import type { Share } from '../../workers/studies/season/share';
import { lineJson, named } from './lineJson';

type Id = 'calcium' | 'magnesium' | 'salinity';

const sharesJson = (id: Id, shares: readonly Share[]) =>
  shares.map(({ mover, moved }) => ({ mover, ...named('moved', id, moved) }));

export const endsJson = (ends: Readonly<Record<Id, number>>) => ({
  calciumMgPerL: ends.calcium,
  magnesiumMgPerL: ends.magnesium,
  salinityPractical: ends.salinity,
});

export const passedJson = ({ line, fast, firstH }: Passed) => ({
  firstH,
  line: line && lineJson(line),
  fast: fast && { quantity: fast.id, ...named('inADay', fast.id, fast.by) },
});

export function firstJson(first: First) {
  if (first.kind === 'refused') return { kind: first.kind, passed: passedJson(first.passed) };
  if (first.kind !== 'first') return first;
  const { kind, days, share, poured, change, ends } = first;
  return {
    ...{ kind, days, share, ends: endsJson(ends) },
    poured: Object.values(poured).map(({ additive, gramsPerDay }) => ({
      ...{ additive, eachMorningG: gramsPerDay },
    })),
    dailyChange: change && {
      ...{ dailyL: change.litres, salinityPractical: change.salinityPractical },
    },
  };
}

type Would = NonNullable<SeasonTold['season']['why']['moved'][number]['since']>['would'][number];

function wouldJson(id: Id, would: Would) {
  const { kind } = would;
  switch (kind) {
    case 'kit':
      return { kind, ...named('readsHigh', id, would.readsHigh) };
    case 'bag':
      return { kind, ...named('holds', id, would.holds), ...named('typed', id, would.typed) };
    case 'withSalinity':
      return { kind, ...named('moved', id, would.moved) };
    case 'skeleton':
      return { kind, mgPerCaShare: would.mgPerCa / 1000, typedShare: would.typed / 1000 };
    case 'unlogged':
      return { kind, additive: would.additive, weeklyG: would.gramsPerWeek };
    case 'creep':
      return { kind, weeklyG: would.gramsPerWeek };
  }
}

/** What is too high, and what brings it down. */
export const loweringJson = ({ id, above, limit, newWaterHolds, ways }: Lowering) => ({
  ways: ways.map((way) => ({
    ...{ kind: way.kind, days: way.days },
    weeklyL: way.kind === 'change' ? way.litres : undefined,
  })),
  ...{ quantity: id, ...named('above', id, above), ...named('limit', id, limit) },
  ...named('newWater', id, newWaterHolds),
});

/** A season for other programs. */
export function seasonAnswerJson({ season, question }: SeasonTold) {
  const { why, first, instead, weekly, lowerings, drifts, alkalinityLeavesDay, trial } = season;
  const { kind, exchange, poured, leftIn, ends, notHeld, judged, promisedDays, passed } = weekly;
  const { alkalinityByDkh } = weekly;
  return {
    ...{ backDays: question.backDays, span: why.span },
    targetCalciumMgPerL: question.targets.calcium,
    targetMagnesiumMgPerL: question.targets.magnesium,
    mostCalciumMgPerLPerDay: question.mostPerDay.calcium,
    mostMagnesiumMgPerLPerDay: question.mostPerDay.magnesium,
    mostSalinityPracticalPerDay: question.mostPerDay.salinity,
    moved: why.moved.map(({ id, readings, latest, since }) => ({
      ...{ quantity: id, count: readings },
      latest: latest && { at: latest.at, ...named('read', id, latest.value) },
      since: since && {
        ...{ at: since.at, days: since.days, differs: since.differs },
        would: since.would.map((way) => wouldJson(id, way)),
        ...{ ...named('read', id, since.read), ...named('planned', id, since.planned) },
        ...named('giveOrTake', id, since.giveOrTake),
        shares: sharesJson(id, since.shares),
      },
    })),
    first: firstJson(first),
    instead: instead && firstJson(instead),
    weekly: {
      ...{ kind, judged, promisedDays, alkalinityByDkh },
      exchange: exchange && {
        ...{ weeklyL: exchange.litresPerWeek, eachL: exchange.litres },
        ...{ everyDays: exchange.everyDays, salinityPractical: exchange.salinityPractical },
        weeklyPlainL: exchange.plainLPerWeek,
      },
      poured: Object.values(poured).map(({ additive, gramsPerWeek, parts }) => ({
        ...{ additive, weeklyG: gramsPerWeek, parts },
      })),
      leftIn: Object.entries(leftIn).map(([metal, share]) => ({ quantity: metal, share })),
      notHeld: notHeld.map(({ id, day, side }) => ({ quantity: id, onDay: day, side })),
      ...{ ends: endsJson(ends), passed: passed && passedJson(passed) },
    },
    lowerings: lowerings.map(loweringJson),
    alkalinityLeavesDay,
    drifts: drifts.map(({ id, now, after, giveOrTake, leavesDay, shares }) => ({
      ...{ quantity: id, leavesDay, ...named('now', id, now) },
      ...{ ...named('after90Days', id, after[0]), ...named('after180Days', id, after[1]) },
      ...named('giveOrTake', id, giveOrTake),
      shares: sharesJson(id, shares),
    })),
    scenario: trial,
  };
}
