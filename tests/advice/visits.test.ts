import { expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import { failureText } from '../../src/say/away/failures';
import { topUpTexts } from '../../src/say/away/provision';
import { usualOptions } from '../../workers/engine/simulation';
import { away } from '../../workers/studies/away/away';
import { atHome, provided } from '../../workers/studies/away/provided';
import { nobodyLooks } from '../../workers/studies/away/unnoticed';
import { pair } from './sodaPump';

it('two pumps of one name each get their own bottle, and a tank on both can be left with visits', () => {
  const [soda] = pair.dosers;
  const half = { ...soda!, mlPerDay: 45 };
  const now = {
    ...pair,
    dosers: [half, { ...half, mlPerDay: 49, stockL: 2 }],
    // Nothing brings calcium here, and it is not what is asked.
    limits: { ...pair.limits, calciumLowMgPerL: 300 },
  };
  const found = away({ now, giveOrTakeDkhPerDay: 0.04, days: 12, visitDays: 2 });
  // From 8.4 dKH to 0.3 below 11 there are 2.3: of 60 g/L soda ash, 105.99 g/mol, in 300 L by hand 217 mL.
  const mostL = (2.3 * 0.35665 * 300) / ((60 * 2 * 1000) / 105.99);
  for (const { stockL } of found.provided.scenario.dosers) expect(stockL).toBeCloseTo(mostL, 2);
  // 12 days of 45 mL with a fifth more by hand: 0.648 L.
  expect(found.vessels.map(({ needL }) => needL)).toEqual([expect.any(Number), 0.7, 0.75]);
  expect(found.provided.kind).toBe('toppedUp');
  expect(found.provided.refilledPumps).toEqual([0, 1]);
  expect(found.wayOut).toBeUndefined();
  const [water, first] = found.topUps;
  // 2 days of 4 L with two fifths more, less what the pumps bring, by hand: 11 L; and 108 mL.
  expect(water!.mostL).toBeGreaterThan(10.5);
  expect(water!.mostL).toBeLessThan(12.5);
  expect(first!.mostL).toBe(0.11);
  expect(topUpTexts(found)[1]).toContain('(217 mL)');
});

it('a failure that lasts until somebody comes is met sooner on an earlier visit', async () => {
  const asked = async (comesDays: number) => {
    const home = atHome(pair, 0, usualOptions);
    const kept = provided(
      { kind: 'filled', scenario: pair, refillEveryDays: 0, refilledPumps: [] },
      { days: 4, vessels: [], home },
      usualOptions,
    )!;
    const left = { days: 4, comesDays, provided: kept };
    const looks = await nobodyLooks(left, usualHandAir, usualOptions, async () => true);
    return looks!.failures.find(({ fault }) => fault.kind === 'doserOff')!;
  };
  const [never, daily] = [await asked(0), await asked(1)];
  expect(never.harm?.line.id).toBe('alkalinityHarm');
  expect(daily.harm).toBeUndefined();
  expect(failureText(daily)).toMatch(/Somebody comes .* before that|Somebody comes/);
});
