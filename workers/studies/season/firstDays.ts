import type { Stretch } from '../turn/replay';
import { partOf, type FirstAsked } from './firstAsked';
import { metals, type Metal } from './metals';
import { Mornings, type DailyChange, type Poured } from './mornings';
import { seasonQuantities, type SeasonId } from './quantity';
import { isTurnedAgain, type Passed, type SeasonTank } from './seasonTank';
import { takenBack, type TakenBack } from './takenBack';

/** How the water gets to where the keeper wants it. */
export type First =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'first';
      readonly days: number;
      /** Of the way to the targets: less than 1 where all of it at once would pass a limit. */
      readonly share: number;
      readonly poured: Partial<Record<Metal, Poured>>;
      readonly change: DailyChange | undefined;
      /** Mean of the day after the last morning, and from which hour on that is. */
      readonly endsFromH: number;
      readonly ends: Readonly<Record<SeasonId, number>>;
      /** What the keeper's own water then takes back at once. */
      readonly takenBack: readonly TakenBack[];
      readonly stretch: Stretch;
    }
  /** Nothing tried keeps what is watched: what is passed first, at the slowest of all. */
  | { readonly kind: 'refused'; readonly passed: Passed }
  /** Alkalinity runs out meanwhile, whatever is poured: the day on which it passes the line of harm, dKH. */
  | { readonly kind: 'alkalinityFirst'; readonly day: number; readonly harmDkh: number }
  /** Not within weeks, with new water as weak or as strong as anybody mixes it. */
  | { readonly kind: 'outOfReach' };

/** A daily limit is kept with a tenth to spare. */
const SPARE = 0.9;
const MOST_DAYS = 30;
const LONGER = 1.5;
const PERCENTS = [2, 5, 10];
/** Part of the way is tried where all of it is not possible. */
const SHARES = [1, 0.6, 0.3];

/** All of the way to the targets, or as much of it as passes no limit at any use that is possible. */
export function firstDays(tank: SeasonTank, asked: FirstAsked): First {
  if (asksNothing(asked)) return { kind: 'none' };
  const runsOut = tank.alkalinityRunsOut();
  if (runsOut) return { kind: 'alkalinityFirst', ...runsOut };
  let all: First | undefined;
  for (const share of SHARES) {
    const found = wholeWay(tank, partOf(tank, asked, share), share);
    if (found.kind === 'first') return found;
    all ??= found;
  }
  return all!;
}

const asksNothing = ({ raise, salinityTo }: FirstAsked): boolean =>
  metals.every((metal) => !raise[metal]) && salinityTo === undefined;

/** The fewest mornings after which all stand where they are wanted. */
function wholeWay(tank: SeasonTank, asked: FirstAsked, share: number): First {
  const { salinityTo } = asked;
  let refused: Passed | undefined;
  const longer = (days: number) => Math.max(days + 1, Math.round(days * LONGER));
  for (let days = fewestDays(tank, asked); days <= MOST_DAYS; days = longer(days)) {
    for (const percent of salinityTo === undefined ? [0, ...PERCENTS] : PERCENTS) {
      // Beside what is poured, changes of water help where salinity stands in the way.
      const helps = salinityTo !== undefined || (refused && isOfSalinity(refused));
      if (percent > 0 && !helps) break;
      const found = tried(tank, asked, share, percent, days);
      if (found?.kind === 'first') return found;
      refused = found?.passed ?? refused;
    }
  }
  return refused ? { kind: 'refused', passed: refused } : { kind: 'outOfReach' };
}

/** As many mornings as the daily limits ask for at least. */
function fewestDays(tank: SeasonTank, { raise, salinityTo, mostPerDay }: FirstAsked): number {
  const to = (id: SeasonId) => (id === 'salinity' ? salinityTo : raise[id]?.to) ?? tank.level(id);
  const days = seasonQuantities.map(({ id }) =>
    Math.ceil(Math.abs(to(id) - tank.level(id)) / (SPARE * mostPerDay[id])),
  );
  return Math.max(1, ...days);
}

/** Solved, and replayed at every use that is possible; undefined where it could not be solved. */
function tried(
  tank: SeasonTank,
  { raise, salinityTo, mostPerDay }: FirstAsked,
  share: number,
  percent: number,
  days: number,
): Extract<First, { kind: 'first' | 'refused' }> | undefined {
  const mornings = new Mornings(tank, raise, salinityTo, percent, days);
  const doses = mornings.solved();
  if (!doses) return undefined;
  const stretch = mornings.stretch(doses);
  const beside = { first: stretch };
  for (const use of tank.uses) {
    const replay = tank.replay([stretch], use);
    const [passed] = [
      ...tank.passed(replay, stretch.untilDay, mostPerDay, use),
      ...(tank.turned.length > 0 ? tank.passedBeside(beside, mostPerDay, use) : []).filter(
        (one) => !isTurnedAgain(one, beside),
      ),
      ...tank.fartherBeside(beside, use),
    ];
    if (passed) return { kind: 'refused', passed };
  }
  const [poured, change] = [mornings.poured(doses), mornings.change(doses)];
  const ends = mornings.endsOf(tank.withMornings(stretch));
  const { endsFromH } = mornings;
  return {
    ...{ kind: 'first', days, share, poured, change },
    ...{ ends, endsFromH, stretch, takenBack: takenBack(tank, stretch, endsFromH, mostPerDay) },
  };
}

const isOfSalinity = ({ line, fast }: Passed): boolean =>
  line?.quantity === 'salinity' || fast?.id === 'salinity';
