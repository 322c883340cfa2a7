import { expect, it } from 'vitest';
import { bottleDumps } from '../../shared/recipe/bottleDump';
import { twoPart } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { heldHighest, turnRecipe } from '../../src/say/turn/turnRecipe';
import { dumpHolds } from '../../workers/studies/plan/fullDump';
import { turn } from '../../workers/studies/turn/turn';
import type { Turned } from '../../workers/studies/turn/turned';

const KIT = { scoopG: 0, pumpMlPerMin: 0 };

const tank = (alkalinityDkh: number): Scenario =>
  scenarioOf({
    tank: { volumeL: 300, alkalinityDkh },
    corals: { useDkhPerDay: 1 },
    evaporation: { litresPerDay: 4 },
  });

function turnedFrom(now: Scenario, targetDkh: number) {
  const question = { now, plan: now, targetDkh, giveOrTakeDkhPerDay: 0.05, kit: KIT };
  const found = turn(question);
  if (found.kind !== 'turn') throw new Error(JSON.stringify(found));
  return { question, turned: found.turned };
}

it('mixes no more than may run in at once, and fills it again before it is empty', () => {
  const plain = tank(8.6);
  const topOff = { ...plain.topOff, gramsPerL: 1.2, reservoirL: 30, refillEveryDays: 6 };
  const now = { ...plain, topOff: { ...topOff, additive: 'calciumHydroxide' as const } };
  const { question, turned } = turnedFrom(now, 8.5);
  const { fullestL, to } = turned;
  const withIt = (reservoirL: number): Scenario => ({
    ...turned.held,
    tank: { ...turned.held.tank, alkalinityDkh: 8.5 },
    topOff: { ...turned.held.topOff, reservoirL },
  });
  expect([dumpHolds(withIt(fullestL!)), dumpHolds(withIt(30))]).toEqual([true, false]);
  const { mix, dose } = turnRecipe(turned, { question });
  expect(mix.join(' ')).toContain(`${(fullestL! * to).toPrecision(3)} g calcium hydroxide in`);
  // Four fifths of it at 3.9 L a day, in whole days.
  const days = Math.floor((0.8 * fullestL!) / turned.toppedOffLPerDay);
  expect(days).toBeLessThan(6);
  expect(dose.join(' ')).toContain(`refill every ${days} days`);
});

it('limits a bottle by the higher of today’s water and the target', () => {
  const limitL = (turned: Turned) => bottleDumps(heldHighest(turned))[0]!.fillL;
  const pumps = (dkh: number) => {
    const now = tank(dkh);
    return turnedFrom({ ...now, dosers: twoPart('sodiumCarbonate', 60, now) }, 8.5).turned;
  };
  const [low, high] = [pumps(8), pumps(9.5)];
  expect(heldHighest(low).tank.alkalinityDkh).toBe(8.5);
  expect(heldHighest(high).tank.alkalinityDkh).toBe(9.5);
  expect(limitL(high)).toBeLessThan(limitL(low));
});
