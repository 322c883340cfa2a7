import { expect, it } from 'vitest';
import { turn } from '../../workers/studies/turn/turn';
import { quietTank } from '../runs/quietTank';

/** A tank on one pump of soda ash, turned to hold 8.5 dKH. */
function turnedFrom(alkalinityDkh: number) {
  const now = quietTank({
    ...{ tank: { alkalinityDkh }, corals: { useDkhPerDay: 0.8 } },
    dosers: [
      {
        ...{ name: 'soda', mlPerDay: 60, stockL: 5 },
        recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 60 }],
      },
    ],
  });
  const kit = { scoopG: 0, pumpMlPerMin: 0 };
  const found = turn({ now, plan: now, targetDkh: 8.5, giveOrTakeDkhPerDay: 0, kit });
  if (found.kind !== 'turn') throw new Error(JSON.stringify(found));
  const { plan, to, first } = found.turned;
  return { set: plan.dosers[0]!.mlPerDay, to, first };
}

it('a pump is set to what holds the target, and to less while the water has to come down', () => {
  const [low, high] = [turnedFrom(8), turnedFrom(9.5)];
  expect(low.set).toBe(low.to);
  expect(high.first).toMatchObject({ kind: 'less', to: high.set });
  expect(high.set).toBeLessThan(high.to);
});
