import { expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { usualOptions } from '../../workers/engine/simulation';
import { LeftTank } from '../../workers/studies/away/leftTank';
import { leftWith } from '../../workers/studies/away/provided';
import { pair } from './sodaPump';

it('an empty bottle stays empty, and what comes of it is said', () => {
  const plan = leftWith(
    { kind: 'filled', scenario: pair, refillEveryDays: 0, refilledPumps: [] },
    9,
  );
  const { run: own, bottlesDryH } = new LeftTank(plan, usualOptions).run(plan);
  // 500 mL at 90 mL a day by hand.
  expect(bottlesDryH[0]! / 24).toBeCloseTo(500 / 90, 2);
  const dkh = readColumn(own.trace, 'alkalinity_dkh');
  expect(dkh[5 * 24]! - dkh[4 * 24]!).toBeGreaterThan(-0.2);
  expect(dkh[9 * 24]! - dkh[8 * 24]!).toBeLessThan(-0.6);
});

it('plain water thins the mix that stands there, and does not take its place', () => {
  const lime = scenarioOf({
    tank: { volumeL: 300 },
    corals: { useDkhPerDay: 1.2 },
    evaporation: { litresPerDay: 4 },
    topOff: { reservoirL: 20, additive: 'calciumHydroxide', gramsPerL: 1 },
  });
  const endsAt = (kind: 'mixed' | 'toppedUp' | 'plain') => {
    const plain = { ...lime, topOff: { ...lime.topOff, additive: 'none' as const } };
    const scenario = kind === 'plain' ? plain : lime;
    const left = leftWith({ kind, scenario, refillEveryDays: 3, refilledPumps: [] }, 6);
    const { run: own } = new LeftTank(left, usualOptions).run(left);
    return readColumn(own.trace, 'alkalinity_dkh').at(-1)!;
  };
  expect(endsAt('mixed')).toBeGreaterThan(endsAt('toppedUp') + 0.3);
  expect(endsAt('toppedUp')).toBeGreaterThan(endsAt('plain') + 1);
});
