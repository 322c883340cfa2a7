import { channelOf } from './channel';
import { leversOf, type Lever } from './lever';
import type { Refusal } from './promised';
import type { Allowed, Attempt, Held, Seeker } from './seeker';

/** The levers of a tank: what runs, and one more channel that could. */
export interface Levers {
  readonly own: readonly Lever[];
  readonly more: readonly Lever[];
}

export const allLevers = ({ now, pairNames }: Seeker): Levers => ({
  own: leversOf(now),
  more: (['sodiumCarbonate', 'sodiumBicarbonate'] as const).flatMap((one) =>
    channelOf(now, one, pairNames),
  ),
});

/** By what share a lever is turned: what is turned least comes first. */
const shareOf = ({ lever, to }: Held) => Math.abs(Math.log(Math.max(1e-3, to / lever.from)));

/** The smallest change that may be offered; else why the smallest of all may not. */
export function findTurn(
  seeker: Seeker,
  { own, more }: Levers,
  targetDkh: number,
  allowed: Allowed,
): Attempt {
  const rests: number[] = [];
  const hold = (lever: Lever): Held[] => {
    const holding = seeker.holding(lever);
    if (holding.kind === 'cannot') {
      rests.push(holding.restsDkh);
      return [];
    }
    const { value, dkhPerUnit } = holding;
    return [{ lever, to: lever.rounded(value), dkhPerUnit }];
  };
  let refusal: Refusal | undefined;
  const ways = own.flatMap(hold).toSorted((a, b) => shareOf(a) - shareOf(b));
  for (const held of ways) {
    const attempt = seeker.attempt(held, allowed);
    if (attempt.kind === 'turn') return attempt;
    refusal ??= attempt.refusal;
  }
  // What is to be turned down is not helped by another that brings more.
  const couldRise =
    ways.every(({ lever, to }) => to > lever.from) && rests.every((dkh) => dkh < targetDkh);
  for (const lever of couldRise ? more : []) {
    for (const held of hold(lever)) {
      const attempt = seeker.attempt(held, allowed);
      if (attempt.kind === 'turn') return attempt;
      refusal ??= attempt.refusal;
    }
  }
  const off = (dkh: number) => Math.abs(dkh - targetDkh);
  const restsDkh = rests.toSorted((a, b) => off(a) - off(b))[0];
  return { kind: 'refused', refusal: refusal ?? { kind: 'outOfReach', restsDkh } };
}
