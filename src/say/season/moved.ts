import { hoursOf } from '../../../shared/log/localTime';
import { wordFor } from '../../../shared/scenario/words';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/season';
import {
  type Season,
  type Moved,
  type Since,
  type SeasonId,
  name,
  begins,
  value,
  signed,
  withUnit,
  grams,
  day,
  listed,
} from './texts';

/** A latest reading older than this is to be read again. */
const OLD_DAYS = 21;

export const KIT = { calcium: '20', magnesium: '60' } as const;

/** Whether a reading shows that it moved at all. */
export const hasMoved = ({ since }: Moved): boolean =>
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

export function movedText({ id, since }: Moved): string {
  const told = since!.read < 0 ? say.fell : say.rose;
  const by = value(id, Math.abs(since!.read));
  return told(begins(name(id)), by, day(since!.at), causeText(id, since!));
}

/** What nobody has read, and what was read too long ago. */
export function unreadTexts(moved: readonly Pick<Moved, 'id' | 'latest'>[], now: string): string[] {
  const unread = moved.filter(({ latest }) => latest === undefined);
  const old = moved.flatMap(({ id, latest }): string[] => {
    const days = latest ? Math.round((hoursOf(now) - hoursOf(latest.at)) / 24) : 0;
    return days > OLD_DAYS ? [say.oldReading(begins(name(id)), days)] : [];
  });
  return [
    ...(unread.length > 0 ? [say.notRead(listed(unread.map(({ id }) => name(id))))] : []),
    ...old,
  ];
}

/** What was poured in or changed since a reading, and is counted with it. */
export const pouredTexts = (poured: Season['poured']): string[] =>
  poured.map(({ id, at, by }) =>
    (by > 0 ? say.pouredSince : say.changedSince)(
      ...([begins(name(id)), value(id, Math.abs(by)), day(at)] as const),
    ),
  );

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
