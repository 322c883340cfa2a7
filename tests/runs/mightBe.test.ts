import { randomLcg, randomNormal } from 'd3-random';
import { expect, it } from 'vitest';
import { meqPerLPerDkh } from '../../shared/seawater/alkalinity';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { doubtsOf } from '../../workers/studies/fit/doubts';
import { spreadOf, type Spread } from '../../workers/studies/mightBe/spread';
import { withUse } from '../../workers/studies/plan/useEnds';
import { runsOf } from '../laws/size';

const last = (scenario: Scenario): Spread => [...spreadOf(scenario, usualOptions)].at(-1)!;

const lime = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.5 },
  corals: { useDkhPerDay: 1.1 },
  evaporation: { litresPerDay: 4 },
  topOff: { reservoirL: 40, additive: 'calciumHydroxide', gramsPerL: 1 },
  days: 14,
});

it('of a tank that nothing is dosed to is what the use alone makes of it, by hand', () => {
  const still = scenarioOf({
    tank: { volumeL: 300, alkalinityDkh: 9 },
    corals: { useDkhPerDay: 0.5 },
    days: 4,
  });
  const { below, above } = last(still);
  // A fifth of 0.5 dKH a day, over four days, less what corals answer to the other water.
  for (const side of [below, above]) {
    expect(side.alkalinity_dkh.at(-1)! / 0.4).toBeGreaterThan(0.85);
    expect(side.alkalinity_dkh.at(-1)! / 0.4).toBeLessThan(1.01);
    expect(side.alkalinity_dkh[0]).toBeLessThan(0.01);
  }
});

it('the widths of limewater are those of its strength and of what evaporates, by hand', () => {
  // 4 L of 1 g/L: 4 · 2/74.09 mol = 108 meq, 1.01 dKH in 300 L; 15 % of strength and 20 % of evaporation
  // move that, in a day, by 0.15 and 0.20; use by 0.11, and all of them are damped by what corals answer.
  const perDay = (4 * 2 * 1000) / 74.09 / 300 / meqPerLPerDkh;
  const byHand = 2 * Math.hypot(0.15 * perDay, 0.2 * perDay, 0.11, 0.1 * perDay);
  const { below, above } = last({ ...lime, days: 1 });
  for (const side of [below, above]) {
    expect(side.alkalinity_dkh.at(-1)! / byHand).toBeGreaterThan(0.75);
    expect(side.alkalinity_dkh.at(-1)! / byHand).toBeLessThan(1.2);
  }
});

it('holds as many whole tanks as it says, drawn with everything off at once, and as many of them leave', () => {
  const plan = {
    ...lime,
    limits: { ...lime.limits, alkalinityLowDkh: 7.5, alkalinityHighDkh: 9.5 },
  };
  const { below, above, leaves } = last(plan);
  const set = readColumn(run(plan).trace, 'alkalinity_dkh');
  const normal = randomNormal.source(randomLcg(0.31))(0, 1);
  const members = Math.max(80, runsOf(400).numRuns);
  let [held, left] = [0, 0];
  for (let n = 0; n < members; n++) {
    let tank = withUse(plan, plan.corals.useDkhPerDay * (1 + 0.1 * normal()));
    for (const { sigma: share, more } of doubtsOf(plan, false)) tank = more(tank, share * normal());
    tank = { ...tank, gas: { ...tank.gas, kLaPerH: tank.gas.kLaPerH * 2 ** normal() } };
    const dkh = readColumn(run(tank).trace, 'alkalinity_dkh');
    const off = dkh.at(-1)! - set.at(-1)!;
    held += Number(off >= -below.alkalinity_dkh.at(-1)! && off <= above.alkalinity_dkh.at(-1)!);
    left += Number(dkh.some((value) => value < 7.5 || value > 9.5));
  }
  console.log(
    `held ${held} of ${members}; left ${(left / members).toFixed(2)}, said ${leaves!.toFixed(2)}`,
  );
  expect(held / members).toBeGreaterThan(0.9 - 2 * Math.sqrt((0.9 * 0.1) / members));
  expect(Math.abs(left / members - leaves!)).toBeLessThan(0.15);
});

it('is as wide where the plan carries what its own use refers to as where it finds that itself', () => {
  const { omegaReference } = settle(lime, usualOptions);
  const carried = last({ ...lime, start: { ...lime.start, omegaReference } });
  const found = last(lime);
  for (const side of ['below', 'above'] as const) {
    const [own, other] = [found, carried].map((one) => one[side].alkalinity_dkh.at(-1)!);
    expect(own).toBeGreaterThan(0.3);
    expect(Math.abs(other! - own!)).toBeLessThan(0.01);
  }
});

it('is coarse first, and every further unknown makes it wider', () => {
  const widths = [...spreadOf(lime, usualOptions)].map(({ above }) => above.alkalinity_dkh.at(-1)!);
  expect(widths.length).toBeGreaterThan(3);
  for (const [i, width] of widths.entries()) {
    if (i > 0) expect(width).toBeGreaterThanOrEqual(widths[i - 1]!);
  }
});
