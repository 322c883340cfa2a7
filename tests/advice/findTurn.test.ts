import { expect, it } from 'vitest';
import { findTurn } from '../../workers/studies/turn/findTurn';
import type { Lever } from '../../workers/studies/turn/lever';
import type { Refusal } from '../../workers/studies/turn/promised';
import type { Held, Seeker } from '../../workers/studies/turn/seeker';

const allowed = { giveOrTakeDkhPerDay: 0, mostDkhPerDay: 1 };
const lever = (kind: Lever['kind'], from: number): Lever => ({
  ...{ kind, from, most: 200 },
  ...{ rounded: (value) => value, set: (plan) => plan },
});
const pump = lever('pump', 80);
const channel = lever('channel', 0);

/** Each mL brings 0.1 dKH, and so many hold the target. */
const found = (holdsAt: number, refused: (held: Held) => Refusal | undefined = () => undefined) => {
  const seeker = {
    uses: () => [1, 1, 1],
    restsOffDkh: (_: Lever, value: number) => 0.1 * (value - holdsAt),
    holding: () => ({ kind: 'holds', value: holdsAt, dkhPerUnit: 0.1 }),
    attempt: (held: Held) => {
      const refusal = refused(held);
      return refusal ? { kind: 'refused', refusal } : { kind: 'turn', held };
    },
  };
  const levers = { own: [pump], otherwise: [], more: [channel] };
  return findTurn(seeker as unknown as Seeker, levers, 8.5, allowed);
};

it('a pump is left alone where its water rests nearer to the target than a test tells', () => {
  expect(found(79)).toMatchObject({ held: { lever: pump, to: 80 } });
  expect(found(70)).toMatchObject({ held: { lever: pump, to: 70 } });
});

it('who is to buy one more channel is told why what runs may not be turned', () => {
  const refusal: Refusal = { kind: 'offTarget', endsDkh: 7, also: [] };
  const turn = found(120, (held) => (held.lever === pump ? refusal : undefined));
  expect(turn).toMatchObject({ held: { lever: channel }, whyNotOwn: refusal });
});
