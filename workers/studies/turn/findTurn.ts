import { NEAR_TARGET_DKH } from '../../../shared/verdict/nearTarget';
import { channelOf } from './channel';
import { leversOf, type Lever } from './lever';
import type { Refusal } from './promised';
import type { Allowed, Attempt, Held, Seeker } from './seeker';

/** The levers of a tank: what runs, and what could in its place or beside it. */
export interface Levers {
  readonly own: readonly Lever[];
  /** What is poured in by hand, by another powder or in smaller parts. */
  readonly otherwise: readonly Lever[];
  readonly more: readonly Lever[];
}

export function allLevers({ now, hands, pairNames, unlinked }: Seeker): Levers {
  const runs = leversOf(now, unlinked);
  // Pumps beside the hand alone are no channel but a plan, which takes the hand's place.
  const isHandAlone = runs.length === 0 && hands.own.length > 0;
  const carbonates = isHandAlone ? [] : (['sodiumCarbonate', 'sodiumBicarbonate'] as const);
  return {
    own: [...runs, ...hands.own],
    otherwise: hands.otherwise,
    more: carbonates.flatMap((one) => channelOf(now, one, pairNames)),
  };
}

/** By what share a lever is turned: what is turned least comes first. */
const shareOf = ({ lever, to }: Held) => Math.abs(Math.log(Math.max(1e-3, to / lever.from)));

/** So near to the target is on it, dKH: nearer than a test can tell. */
const STAYS_DKH = 0.15;

interface Staying {
  readonly held: Held;
  /** Whether it holds the water at the target, and not only at a use that is as likely as not. */
  readonly isThere: boolean;
}

/** What runs, left as it is, where for all that is known of the use it may hold the target. */
function staying(
  seeker: Seeker,
  own: readonly Lever[],
  { giveOrTakeDkhPerDay }: Allowed,
): Staying | undefined {
  const [lever] = own;
  if (!lever || lever.from > lever.most) return undefined;
  const [off, highest, lowest] = seeker
    .uses(giveOrTakeDkhPerDay)
    .map((use) => seeker.restsOffDkh(lever, lever.from, use));
  const isThere = Math.abs(off!) <= STAYS_DKH;
  if (!isThere && !(highest! >= 0 && lowest! <= 0)) return undefined;
  const holding = seeker.holding(lever);
  if (holding.kind === 'cannot') return undefined;
  return { held: { lever, to: lever.from, dkhPerUnit: holding.dkhPerUnit }, isThere };
}

/** The smallest change that may be offered, none where none is needed; else why the smallest of all may not. */
export function findTurn(
  seeker: Seeker,
  { own, otherwise, more }: Levers,
  targetDkh: number,
  allowed: Allowed,
): Attempt {
  const rests: number[] = [];
  const near: Held[] = [];
  const hold = (lever: Lever): Held[] => {
    const holding = seeker.holding(lever);
    const { value, dkhPerUnit } = holding;
    const held = { lever, to: lever.rounded(value), dkhPerUnit };
    if (holding.kind === 'holds') return [held];
    rests.push(holding.restsDkh);
    if (Math.abs(holding.restsDkh - targetDkh) <= NEAR_TARGET_DKH && dkhPerUnit > 0)
      near.push(held);
    return [];
  };
  let refusal: Refusal | undefined;
  const firstTurn = (all: readonly Held[], tells = true) => {
    for (const held of all) {
      const attempt = seeker.attempt(held, allowed);
      if (attempt.kind === 'turn') return attempt;
      if (tells) refusal ??= attempt.refusal;
    }
    return undefined;
  };
  const stays = staying(seeker, own, allowed);
  const ways = own.flatMap(hold).toSorted((a, b) => shareOf(a) - shareOf(b));
  // Nobody buys a pump for what the readings cannot tell from nothing, or where what runs comes near.
  const asItIs = stays ? [stays.held] : [];
  const tried = stays?.isThere ? [...asItIs, ...ways] : [...ways, ...asItIs];
  const ofOwn = firstTurn(tried) ?? firstTurn(near, false);
  if (ofOwn) return ofOwn;
  // What is to be turned down is not helped by another that brings more.
  const couldRise =
    ways.every(({ lever, to }) => to > lever.from) && rests.every((dkh) => dkh < targetDkh);
  const off = (dkh: number) => Math.abs(dkh - targetDkh);
  const outOfReach = (): Refusal => ({
    ...{ kind: 'outOfReach', restsDkh: rests.toSorted((a, b) => off(a) - off(b))[0] },
  });
  const whyNotOwn = refusal ?? outOfReach();
  for (const lever of [...otherwise, ...(couldRise ? more : [])]) {
    const attempt = firstTurn(hold(lever));
    if (attempt) return { ...attempt, whyNotOwn };
  }
  return { kind: 'refused', refusal: refusal ?? outOfReach() };
}
