import { expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { usualOptions } from '../../workers/engine/simulation';
import { emptiesFirst } from '../../workers/studies/away/empties';
import { LeftTank } from '../../workers/studies/away/leftTank';
import { atHome, leftWith, provided } from '../../workers/studies/away/provided';
import { quietTank } from '../runs/quietTank';
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

it('what is outside with the keeper at home, too, is told to be so anyway, and nothing else', () => {
  const now = quietTank({ tank: { magnesiumMgPerL: 1600 } });
  const left = { kind: 'filled', scenario: now, refillEveryDays: 0, refilledPumps: [] } as const;
  const home = atHome(now, 0, usualOptions);
  const found = provided(left, { days: 2, vessels: [], home }, usualOptions)!;
  expect(found.anyway.map(({ id }) => id)).toEqual(['magnesiumHigh']);
  expect(found.insideDays).toBe(2);
});

it('the vessel that may be empty first is told, whichever it is', () => {
  const need = { name: undefined, needL: 30, mostUsedL: 30, dailyL: 4, hasL: 0, usedL: 0 };
  const lasts = { lastsDays: undefined, surelyDays: undefined, harmless: undefined };
  const vessels = [
    { ...need, ...lasts, pump: undefined, dailyMostL: 4 },
    { ...need, ...lasts, pump: 0, dailyMostL: 0.1 },
  ];
  const first = (reservoirL: number) => {
    const scenario = { ...pair, topOff: { ...pair.topOff, reservoirL } };
    const left = { kind: 'filled', scenario, refillEveryDays: 0, refilledPumps: [] } as const;
    return emptiesFirst(left, vessels);
  };
  // 500 mL at 100 mL a day are 5 days; 24 L at 4 L are 6, and 16 L 4.
  expect(first(24)).toEqual({ pump: 0, days: 5 });
  expect(first(16)).toEqual({ pump: undefined, days: 4 });
});
