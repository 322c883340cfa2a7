import { hoursOf, spokenDay } from '../../../shared/log/localTime';
import { toFigures } from '../../../shared/units/digits';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import { wordFor } from '../../../shared/scenario/words';
import { beyondText } from '../drill/boughtText';
import { lineValue } from '../lineTexts';
import { figure, figureText } from '../../../shared/words/figure';
import { say as quantities } from '../../../shared/words/quantities';
import { say } from '../../../shared/words/season';
import type { SeasonTold } from '../../ask/outcome';

type Season = SeasonTold['season'];
type Moved = Season['why']['moved'][number];
type Since = NonNullable<Moved['since']>;
type SeasonId = Moved['id'];
type First = Season['first'];
type Poured = Extract<First, { kind: 'first' }>['poured'];

/** A latest reading older than this, against the newest line of the log, is to be read again. */
const OLD_DAYS = 21;
const KIT = { calcium: '20', magnesium: '60' } as const;
/** A test tells so much. */
const TOLD_DKH = 0.25;
const MINUS = '−';

const decimals = (id: SeasonId) => (id === 'salinity' ? 1 : 0);
const unit = (id: SeasonId) => (id === 'salinity' ? 'ppt' : 'mg/L');
const name = (id: SeasonId): string => quantities.limits[id];
const begins = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const value = (id: SeasonId, number: number): string =>
  `${figure(number, decimals(id))} ${unit(id)}`;
/** "+12", "−0.4". */
function signed(id: SeasonId, number: number): string {
  const size = figure(Math.abs(number), decimals(id));
  return number < 0 ? `${MINUS}${size}` : `+${size}`;
}
const withUnit = (id: SeasonId, number: number): string => `${signed(id, number)} ${unit(id)}`;
const grams = (number: number): string => figure(threeFigures(number));
const litres = (number: number): string => figure(threeFigures(number));
const roughly = (number: number): string => figure(toFigures(number, 2));
const day = (at: string): string => spokenDay(at);

/** "calcium, magnesium and salinity". */
const listed = (names: readonly string[]): string =>
  names.length < 2
    ? names.join('')
    : quantities.listed(names.slice(0, -1).join(', '), names.at(-1)!);

/** "dosing pumps +1553, coral growth −1258". */
export const sharesText = (id: SeasonId, shares: Since['shares']): string =>
  shares.map(({ mover, moved }) => say.share(say.movers[mover], signed(id, moved))).join(', ');

/** Whether a reading shows that it moved at all. */
const hasMoved = ({ since }: Moved): boolean =>
  since !== undefined && (since.differs || Math.abs(since.read) > since.giveOrTake);

function causeText(id: SeasonId, { read, planned, differs, shares }: Since): string {
  // A plan that explains less than half of it is no cause.
  if (differs || planned / read < 0.5) return say.causeUnknown(withUnit(id, planned));
  const along = shares.find(({ moved }) => moved * read > 0);
  const against = shares.find(({ moved }) => moved * read < 0);
  if (!along) return say.noCause;
  const [mover, by] = [say.movers[along.mover], signed(id, along.moved)] as const;
  return against
    ? say.causeAgainst(mover, by, say.movers[against.mover], signed(id, against.moved))
    : say.causeBy(mover, by);
}

function movedText({ id, since }: Moved): string {
  const told = since!.read < 0 ? say.fell : say.rose;
  const by = value(id, Math.abs(since!.read));
  return told(begins(name(id)), by, day(since!.at), causeText(id, since!));
}

const pouredText = (poured: Poured): string =>
  listed(
    Object.values(poured).map(({ additive, gramsPerDay }) =>
      say.grams(grams(gramsPerDay), wordFor(additive)),
    ),
  );

function firstText(first: First): string {
  if (first.kind === 'none') return say.noAdd;
  if (first.kind === 'outOfReach') return say.outOfReach;
  if (first.kind === 'refused') return refusedText(first);
  const { poured, days, change } = first;
  const what = pouredText(poured);
  if (!change) return what === '' ? say.noAdd : say.pour(what, days);
  const water = [litres(change.litres), figure(change.salinityPractical)] as const;
  return what === '' ? say.changeFirst(days, ...water) : say.pourWith(what, days, ...water);
}

function refusedText({ passed: { line, fast } }: Extract<First, { kind: 'refused' }>): string {
  return say.refused(
    line
      ? `${beyondText(line)} (${figureText(lineValue(line.quantity, line.worst))})`
      : say.fast(begins(name(fast!.id)), value(fast!.id, fast!.by)),
  );
}

function weeklyText({ weekly }: Season, mixedNow: number): string {
  const { kind, exchange } = weekly;
  if (kind === 'cannot') return say.thenCannot;
  if (!exchange) return say.thenNone;
  const { litresPerWeek, salinityPractical } = exchange;
  return salinityPractical === mixedNow && kind === 'asIs'
    ? say.thenSame(litres(litresPerWeek))
    : say.thenMixed(litres(litresPerWeek), figure(salinityPractical));
}

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
  const past = why.span === undefined ? [say.noPast] : moved.length === 0 ? [say.steady] : moved;
  return {
    headline: [...past, firstText(first), weeklyText(season, mixedNow)].join(' '),
    beside: [
      ...unreadTexts(season, question),
      ...(season.alkalinityLeavesDay === undefined
        ? []
        : [say.alkalinityLeaves(String(season.alkalinityLeavesDay))]),
      ...endsTexts(season),
      ...season.lowerings.flatMap(loweringTexts),
      ...weeklyTexts(season, mixedNow),
      ...promiseTexts(weekly),
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

/** What nobody has read, and what was read too long ago. */
function unreadTexts({ why }: Season, { readings }: SeasonTold['question']): string[] {
  const unread = why.moved.filter(({ latest }) => latest === undefined);
  const newest = readings.reduce((last, { at }) => (at > last ? at : last), '');
  const old = why.moved.flatMap(({ id, latest }): string[] => {
    const days = latest ? Math.round((hoursOf(newest) - hoursOf(latest.at)) / 24) : 0;
    return days > OLD_DAYS ? [say.oldReading(begins(name(id)), days)] : [];
  });
  return [
    ...(unread.length > 0 ? [say.notRead(listed(unread.map(({ id }) => name(id))))] : []),
    ...old,
  ];
}

function endsTexts({ first }: Season): string[] {
  if (first.kind !== 'first') return [];
  const { calcium, magnesium, salinity } = first.ends;
  return [
    say.endsAt(figure(calcium, 0), figure(magnesium, 0), figure(salinity, 1)),
    ...(pouredText(first.poured) === '' ? [] : [say.kitDoubt(KIT.calcium, KIT.magnesium)]),
  ];
}

function loweringTexts({ id, above, limit, ways, newWaterHolds }: Season['lowerings'][number]) {
  const told = say.ways;
  const text = (way: (typeof ways)[number]): string =>
    way.kind === 'change'
      ? told.change(litres(way.litres), figure(way.percent), way.days)
      : told[way.kind](way.days);
  return [
    say.high(begins(name(id)), value(id, above), value(id, limit)),
    ...(ways.length > 0 ? ways.map(text) : [say.noWay(figure(newWaterHolds, 0))]),
  ];
}

function partsText(parts: number): string {
  if (parts === 1) return say.parts.once;
  return parts === 7 ? say.parts.daily : say.parts.in(String(parts));
}

const METALS = ['calcium', 'magnesium'] as const;

function weeklyTexts({ weekly }: Season, mixedNow: number): string[] {
  const { exchange, poured, leftIn, notHeld, alkalinityByDkh } = weekly;
  return [
    ...waterTexts(exchange, mixedNow),
    ...METALS.flatMap((id) => {
      const [one, share] = [poured[id], leftIn[id]];
      return [
        ...(one
          ? [
              say.weekly(
                ...([grams(one.gramsPerWeek), wordFor(one.additive)] as const),
                partsText(one.parts),
              ),
            ]
          : []),
        ...(share === undefined ? [] : [say.leftIn(name(id), figure(100 * share, 0))]),
      ];
    }),
    ...(Math.abs(alkalinityByDkh) < TOLD_DKH
      ? []
      : [
          (alkalinityByDkh < 0 ? say.alkalinityLower : say.alkalinityHigher)(
            figure(Math.abs(alkalinityByDkh), 1),
          ),
        ]),
    ...notHeld.map(({ id, day: on, side }) =>
      (side === 'above' ? say.notHeldAbove : say.notHeldBelow)(begins(name(id)), String(on)),
    ),
  ];
}

function waterTexts(exchange: Season['weekly']['exchange'], mixedNow: number): string[] {
  if (!exchange || exchange.salinityPractical === mixedNow) return [];
  const { litresPerWeek, plainLPerWeek, salinityPractical } = exchange;
  return plainLPerWeek > 0
    ? [say.plainOf(roughly(plainLPerWeek), litres(litresPerWeek), figure(mixedNow))]
    : [say.strongerBy(figure(salinityPractical), figure(mixedNow))];
}

function promiseTexts({ kind, notHeld, judged, promisedDays, passed }: Season['weekly']): string[] {
  if (kind === 'cannot') return [];
  const ids = judged.filter((id) => notHeld.every((leaves) => leaves.id !== id));
  if (ids.length === 0) return [];
  const inside = promisedDays > 0 ? [say.promised(promisedDays, listed(ids.map(name)))] : [];
  return passed?.line && passed.firstH < (promisedDays + 1) * 24
    ? [...inside, say.promisedBut(beyondText(passed.line), String(promisedDays + 1))]
    : inside;
}

function driftText(drift: Season['drifts'][number]): string {
  const { id, now, after, giveOrTake, shares, leavesDay } = drift;
  const told = say.drift(
    ...([name(id), value(id, now), value(id, after[0]), value(id, after[1])] as const),
    value(id, giveOrTake),
  );
  const leaves = leavesDay === undefined ? told : say.driftLeaves(told, String(leavesDay));
  return say.driftShares(leaves, sharesText(id, shares));
}

function insteadTexts({ instead }: Season): string[] {
  if (instead?.kind !== 'first') return [];
  const what = pouredText(instead.poured);
  return what === '' ? [] : [say.instead(what, instead.days)];
}

/** What was read to move otherwise than the plan says, and what would tell. */
export function strayTexts({ why }: Season): { title: string; ways: readonly string[] }[] {
  return why.moved.flatMap(({ id, since }) => {
    if (!since?.differs) return [];
    const title = say.differs(
      ...([begins(name(id)), withUnit(id, since.read), withUnit(id, since.planned)] as const),
      value(id, since.giveOrTake),
    );
    return [{ title, ways: since.would.map((way) => wouldText(id, way)) }];
  });
}

function wouldText(id: SeasonId, would: Since['would'][number]): string {
  const told = say.would;
  switch (would.kind) {
    case 'kit':
      return would.readsHigh === undefined
        ? told.kit
        : (would.readsHigh > 0 ? told.kitHigh : told.kitLow)(value(id, Math.abs(would.readsHigh)));
    case 'withSalinity':
      return told.withSalinity(withUnit(id, would.moved));
    case 'bag':
      return told.bag(value(id, would.holds), value(id, would.typed));
    case 'unlogged':
      return told.unlogged(grams(would.gramsPerWeek), wordFor(would.additive));
    case 'creep':
      return told.creep(grams(would.gramsPerWeek));
    case 'skeleton':
      return told.skeleton(figure(would.mgPerCa, 0), figure(would.typed));
  }
}

/** A row of the table. */
export interface SeasonRow {
  readonly name: string;
  readonly read: string;
  readonly moved: string;
  readonly why: string;
  readonly add: string;
  readonly days: string;
}

export const seasonRows = ({ season, question }: SeasonTold): SeasonRow[] =>
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
    ...addCells(id, season, question),
  }));

function addCells(
  id: SeasonId,
  { first, lowerings }: Season,
  { now }: SeasonTold['question'],
): Pick<SeasonRow, 'add' | 'days'> {
  const none = { add: say.enough, days: say.nothing };
  if (lowerings.some((one) => one.id === id)) return { add: say.highCell, days: say.nothing };
  if (first.kind === 'refused' || first.kind === 'outOfReach') {
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
