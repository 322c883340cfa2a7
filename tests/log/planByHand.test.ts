import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../shared/scenario/schema';
import type { Carbonate } from '../../shared/recipe/twoPart';
import { readColumn } from '../../shared/trace/trace';
import { lineOf } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { correct } from '../../workers/studies/plan/correct';
import { twoPartAlone } from '../../workers/studies/plan/ways';
import { quietTank } from '../runs/quietTank';

describe('a correction, by hand', () => {
  it.each([
    ['the same morning where the clock stands at 7', 7, 1, 2],
    ['the next morning where it stands at 10', 10, 2, 23],
  ])('is poured in at nine, %s', (_, clockHour, day, afterH) => {
    const low = quietTank({ tank: { alkalinityDkh: 7.7 }, start: { clockHour } });
    const found = correct({
      upkeep: low,
      targetDkh: 8.5,
      giveOrTakeDkhPerDay: 0,
      additive: 'sodiumBicarbonate',
    });
    if (found.kind !== 'raise') throw new Error(found.kind);
    expect(found.scenario.additions.map((one) => [one.day, one.hour])).toEqual([[day, 9]]);
    // 2.996 g raise 100 L by 1 dKH (additives.csv): 7.19 g for 0.8 dKH in 300 L.
    expect(found.gramsPerDay).toBeCloseTo(7.19, 1);
    expect(found.stopsFor).toBe('target');
    const dkh = readColumn(run(found.scenario).trace, 'alkalinity_dkh');
    expect(dkh[afterH - 1]).toBeCloseTo(7.7, 2);
    expect(dkh[afterH + 1]).toBeCloseTo(8.5, 1);
  });

  it('names no dose where the first may leave the band, and a dose of nothing is none', () => {
    // At a use of 0.2 one morning leads to 10.95 and at none past 11, which nothing poured in keeps.
    const near = quietTank({ tank: { alkalinityDkh: 10.6 }, corals: { useDkhPerDay: 0.2 } });
    const asked = { upkeep: near, targetDkh: 10.95, giveOrTakeDkhPerDay: 0.2 };
    const found = correct({ ...asked, additive: 'sodiumBicarbonate' });
    expect(found).toEqual({ kind: 'unsure', giveOrTakeDkhPerDay: 0.2 });
  });

  it('says of soda ash that it would lift pH beyond the limit, where bicarbonate does not', () => {
    const there = quietTank({ tank: { alkalinityDkh: 10 } });
    // Spread over a month of mornings soda ash still lifts it by a hundredth at once.
    const limitNbs = lineOf(run(there).lines, 'phHigh').worst + 0.005;
    const upkeep = quietTank({ limits: { phHighNbs: limitNbs } });
    const by = (additive: Carbonate) =>
      correct({ upkeep, targetDkh: 10, giveOrTakeDkhPerDay: 0, additive });
    expect(by('sodiumBicarbonate').kind).toBe('raise');
    expect(by('sodiumCarbonate')).toEqual({
      ...{ kind: 'tooHighPh', additive: 'sodiumCarbonate', limitNbs },
    });
  });

  it('is one morning where the tank falls faster than it may be moved', () => {
    const falling = quietTank({
      ...{ corals: { useDkhPerDay: 1.5 }, limits: { alkalinityChangeDkhPerDay: 0.5 } },
    });
    const asked = { upkeep: falling, targetDkh: 9, giveOrTakeDkhPerDay: 0 };
    const found = correct({ ...asked, additive: 'sodiumBicarbonate' });
    if (found.kind !== 'raise') throw new Error(found.kind);
    expect([found.stopsFor, found.days]).toEqual(['day', 1]);
    // 2.996 g raise 100 L by 1 dKH (additives.csv): 0.5 dKH less a tenth in 300 L.
    expect(found.gramsPerDay).toBeCloseTo(4.04, 1);
  });
});

it('two-part pumps bring what is used, gram for gram, to three figures of a pump', () => {
  // Growth that does not answer to saturation much: the pH that soda ash brings moves it a little.
  const using = quietTank({
    ...{ days: 14, corals: { useDkhPerDay: 1.5 }, gas: { kLaPerH: 6 } },
    tank: { alkalinityDkh: 8 },
  });
  const settled: Scenario = { ...using, start: { ...using.start, carbon: 'settledCycle' } };
  const { scenario } = twoPartAlone((plan) => run(plan, usualOptions), settled, 8);
  // 1.890 g of soda ash raise 100 L by 1 dKH (additives.csv): 8.5 g a day for 1.5 in 300 L, at
  // 100 g/L 85 mL.
  const { mlPerDay, recipe } = scenario.dosers[0]!;
  expect(recipe).toEqual([{ additive: 'sodiumCarbonate', gramsPerL: 100 }]);
  expect(Math.abs(mlPerDay / 85.05 - 1)).toBeLessThan(0.04);
  expect(scenario.dosers[1]!.mlPerDay).toBe(mlPerDay);
  const dkh = readColumn(run(scenario).trace, 'alkalinity_dkh');
  expect(Math.abs(dkh.at(-1)! - 8)).toBeLessThan(0.1);
});

it('two-part pumps bring what corals take at the target, however little they took where it was read', () => {
  // A use of 2 that was read at Ω 2: proportional to Ω − 1, it is nearly three times that at 9 dKH.
  const hungry = quietTank({
    ...{ days: 28, tank: { alkalinityDkh: 9 }, gas: { kLaPerH: 6 } },
    start: { carbon: 'settledCycle', omegaReference: 2 },
    corals: { useDkhPerDay: 2, omegaLaw: 'proportional' },
  });
  const { scenario } = twoPartAlone((plan) => run(plan, usualOptions), hungry, 9);
  const dkh = readColumn(run(scenario).trace, 'alkalinity_dkh');
  expect(Math.abs(dkh.at(-1)! - 9)).toBeLessThan(0.2);
});
