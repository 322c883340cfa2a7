import { mean } from 'd3-array';
import { expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { LeftTank } from '../../workers/studies/away/leftTank';
import { atHome, leftWith, provided } from '../../workers/studies/away/provided';
import { correct } from '../../workers/studies/plan/correct';
import { threePlans } from '../../workers/studies/plan/threePlans';
import { usesWithin, withUse } from '../../workers/studies/plan/useEnds';
import { withReference } from '../../workers/studies/plan/withReference';

/** A pair that holds 0.8 dKH a day in the wharf pilot’s tank at Nether Quill. */
const pair = scenarioOf({
  days: 14,
  tank: { volumeL: 240, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 0.8 },
  evaporation: { litresPerDay: 3 },
  topOff: { reservoirL: 60 },
  dosers: [
    {
      name: 'carbonate',
      mlPerDay: 48,
      stockL: 5,
      recipe: [{ additive: 'sodiumBicarbonate', gramsPerL: 84 }],
    },
  ],
  limits: { alkalinityLowDkh: 7.4, alkalinityHighDkh: 9.6 },
});
const BY = 0.2;
/** What two starts found by different ways differ by, dKH. */
const SAME_DKH = 0.02;

const uses = usesWithin(pair.corals.useDkhPerDay, BY);

it('a tank that is left alone ends between those that were settled with the least and the highest use', () => {
  const now = withReference(pair, usualOptions);
  const left = { kind: 'filled' as const, scenario: now, refillEveryDays: 0, refilledPumps: [] };
  const home = atHome(now, BY, usualOptions);
  const { endsDkh } = provided(left, { days: 10, vessels: [], home }, usualOptions)!;
  const settled = uses.map((use) => {
    const tank = leftWith({ ...left, scenario: withUse(pair, use) }, 10);
    const { trace } = new LeftTank(tank, usualOptions).run(tank).run;
    return readColumn(trace, 'alkalinity_dkh').at(-1)!;
  });
  expect(Math.abs(endsDkh.low - Math.min(...settled))).toBeLessThan(SAME_DKH);
  expect(Math.abs(endsDkh.high - Math.max(...settled))).toBeLessThan(SAME_DKH);
});

it('a plan is promised for as long as it holds in the tanks that were settled with the least and the highest use', () => {
  const question = {
    now: pair,
    targetDkh: 8.4,
    giveOrTakeDkhPerDay: BY,
    kit: { scoopG: 0, pumpMlPerMin: 0 },
  };
  const pumps = threePlans(question).find(({ id }) => id === 'twoPart')!;
  const heldH = uses.map((use) => {
    const { omegaReference } = settle(withUse(pair, use), usualOptions);
    const plan = { ...pumps.scenario, start: { ...pumps.scenario.start, omegaReference } };
    const firsts = run(withUse(plan, use)).lines.map(({ firstH }) => firstH ?? Infinity);
    return Math.min(...firsts, plan.days * 24);
  });
  expect(pumps.promisedDays).toBe(Math.floor(Math.min(...heldH) / 24));
  expect(pumps.promisedDays).toBeLessThan(28);
});

it('a raise ends between the tanks that were settled with the highest and the least use', () => {
  const upkeep = { ...pair, tank: { ...pair.tank, alkalinityDkh: 7.4 } };
  const found = correct({
    upkeep,
    targetDkh: 8.4,
    giveOrTakeDkhPerDay: BY,
    additive: 'sodiumBicarbonate',
  });
  if (found.kind !== 'raise') throw new Error(found.kind);
  const { day, hour } = found.scenario.additions.at(-1)!;
  const lastH = (day - 1) * 24 + hour;
  const ends = uses.map((use) => {
    const { trace } = run(withUse(found.scenario, use));
    return mean(readColumn(trace, 'alkalinity_dkh').subarray(lastH, lastH + 24))!;
  });
  expect(Math.abs(found.endsDkh[0] - Math.min(...ends))).toBeLessThan(SAME_DKH);
  expect(Math.abs(found.endsDkh[1] - Math.max(...ends))).toBeLessThan(SAME_DKH);
});
