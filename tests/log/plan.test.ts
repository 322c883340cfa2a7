import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { twoPart } from '../../shared/recipe/twoPart';
import { parseScenarioText } from '../../shared/scenario/parse';
import { scenarioOf, scenarioText } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { largestDailyChange } from '../../shared/verdict/measures';
import { run } from '../../workers/engine/run';
import { correct } from '../../workers/studies/plan/correct';
import { withUse } from '../../workers/studies/plan/offered';
import { threePlans } from '../../workers/studies/plan/threePlans';
import { patience, runsOf } from '../laws/size';

const kit = { scoopG: 0, pumpMlPerMin: 0 };
const tenth = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((n) => n / 10);

/** A tank in want of a plan: sizes, appetites and airs that keepers have. */
const anyTank = fc.record({
  volumeL: fc.integer({ min: 60, max: 1200 }),
  use: tenth(0.2, 2.8),
  share: tenth(0.5, 2),
  kLa: tenth(0.6, 4),
  tempC: tenth(24, 27),
  target: tenth(8.4, 10),
  now: tenth(6.2, 11.8),
  giveOrTake: fc.integer({ min: 2, max: 15 }).map((n) => n / 100),
});
type AnyTank = typeof anyTank extends fc.Arbitrary<infer T> ? T : never;

const tankOf = ({ volumeL, use, share, kLa, tempC, now }: AnyTank) =>
  scenarioOf({
    type: 'paper-reef/scenario',
    version: 2,
    title: 'a tank in the sail loft at Wexcombe Hythe',
    days: 28,
    tank: { volumeL, tempC, alkalinityDkh: now },
    corals: { useDkhPerDay: use, growthPercentPerDay: 0.2 },
    evaporation: { litresPerDay: (volumeL * share) / 100 },
    gas: { kLaPerH: kLa },
    limits: { alkalinityLowDkh: 7.5, alkalinityHighDkh: 11 },
  });

/** Through the file's text, as somebody else would run it. */
const replayed = (scenario: ReturnType<typeof tankOf>) => {
  const parsed = parseScenarioText(scenarioText(scenario));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return run(parsed.scenario);
};

describe('plans', () => {
  it(
    'replayed without a page, stay in the band for as long as they promise, whatever consumption the log allows',
    () => {
      let promises = 0;
      fc.assert(
        fc.property(anyTank, fc.constantFrom(-1, 1, 0.4), (tank, aside) => {
          const now = tankOf(tank);
          const plans = threePlans({
            ...{ now, targetDkh: tank.target, kit },
            giveOrTakeDkhPerDay: tank.giveOrTake,
          });
          expect(plans).toHaveLength(3);
          for (const { scenario, promisedDays, offered } of plans) {
            if (!offered) continue;
            promises++;
            const use = scenario.corals.useDkhPerDay + aside * tank.giveOrTake;
            const dkh = readColumn(replayed(withUse(scenario, use)).trace, 'alkalinity_dkh');
            const promised = dkh.subarray(0, promisedDays * 24 + 1);
            expect(Math.min(...promised)).toBeGreaterThanOrEqual(7.5);
            expect(Math.max(...promised)).toBeLessThanOrEqual(11);
          }
        }),
        runsOf(60),
      );
      expect(promises).toBeGreaterThan(3);
    },
    patience * 3,
  );

  it('hold the target that was asked, limewater first and pumps for the rest', () => {
    const now = tankOf({
      volumeL: 900,
      use: 1.8,
      share: 1,
      kLa: 2.5,
      tempC: 26,
      target: 9,
      now: 9,
      giveOrTake: 0.1,
    });
    const [limewater, pumps] = threePlans({ now, targetDkh: 9, giveOrTakeDkhPerDay: 0.1, kit });
    expect(limewater!.scenario.topOff.additive).toBe('calciumHydroxide');
    expect(limewater!.scenario.dosers).toHaveLength(2);
    expect(pumps!.scenario.topOff.additive).toBe('none');
    for (const plan of [limewater!, pumps!]) {
      const lastWeek = readColumn(replayed(plan.scenario).trace, 'alkalinity_dkh').slice(-168);
      // As near as a pump of three figures sets it.
      expect(lastWeek.reduce((a, b) => a + b) / 168).toBeCloseTo(9, 1);
    }
  });

  it('bring in limewater no more than keeps pH inside the limit', () => {
    const still = tankOf({
      volumeL: 300,
      use: 1.5,
      share: 2,
      kLa: 0.6,
      tempC: 25,
      target: 9,
      now: 9,
      giveOrTake: 0.1,
    });
    const [limewater] = threePlans({ now: still, targetDkh: 9, giveOrTakeDkhPerDay: 0.1, kit });
    const { trace } = replayed(limewater!.scenario);
    expect(Math.max(...readColumn(trace, 'ph_nbs'))).toBeLessThanOrEqual(
      still.limits.phHighNbs + 0.02,
    );
    expect(limewater!.scenario.dosers.length).toBeGreaterThan(0);
  });
});

describe('corrections', () => {
  it(
    'reach the target and break no daily limit, in any tank',
    () => {
      fc.assert(
        fc.property(anyTank, fc.constantFrom(0.5, 1), (tank, daily) => {
          const plain = tankOf(tank);
          const limits = { ...plain.limits, alkalinityChangeDkhPerDay: daily };
          const stockMl = gramsForDkh('sodiumCarbonate', tank.use, tank.volumeL) * 10;
          const now = { ...plain, limits, dosers: twoPart('sodiumCarbonate', stockMl, plain) };
          const found = correct(now, tank.target, 'sodiumBicarbonate');
          if (found.kind === 'none') return;
          if (found.kind === 'tooFast') throw new Error(found.kind);
          const { trace } = replayed(found.scenario);
          expect(Math.abs(largestDailyChange(trace).value)).toBeLessThanOrEqual(daily);
          const dkh = readColumn(trace, 'alkalinity_dkh');
          if (found.kind === 'raise') expect(Math.max(...dkh)).toBeGreaterThan(tank.target - 0.15);
          else expect(Math.min(...dkh)).toBeLessThanOrEqual(tank.target);
        }),
        runsOf(60),
      );
    },
    patience * 3,
  );

  it('raises 6.2 to 8.5 in 450 L with about the bicarbonate that the table says', () => {
    const now = {
      ...tankOf({
        volumeL: 450,
        use: 0.2,
        share: 1,
        kLa: 1.5,
        tempC: 25,
        target: 8.5,
        now: 6.2,
        giveOrTake: 0.1,
      }),
    };
    const still = {
      ...now,
      corals: { ...now.corals, useDkhPerDay: 0 },
      food: { ...now.food, gramsPerDay: 0 },
    };
    const found = correct(still, 8.5, 'sodiumBicarbonate');
    if (found.kind !== 'raise') throw new Error(found.kind);
    // 2.996 g raise 100 L by 1 dKH (additives.csv): 31.0 g for 2.3 dKH in 450 L.
    expect(found.gramsPerDay * found.days).toBeCloseTo(31, -0.5);
    expect(found.days).toBeGreaterThanOrEqual(3);
  });

  it('says so when nothing that is poured by hand stays within the limit', () => {
    const now = tankOf({
      volumeL: 300,
      use: 2.5,
      share: 1,
      kLa: 1.5,
      tempC: 25,
      target: 9,
      now: 7,
      giveOrTake: 0.1,
    });
    const limits = { ...now.limits, alkalinityChangeDkhPerDay: 0.5 };
    expect(correct({ ...now, limits }, 9, 'sodiumBicarbonate').kind).toBe('tooFast');
  });

  it('waits for a high reading to come down, and dosing stops meanwhile', () => {
    const now = tankOf({
      volumeL: 300,
      use: 0.6,
      share: 1,
      kLa: 1.5,
      tempC: 25,
      target: 9,
      now: 11.8,
      giveOrTake: 0.1,
    });
    const found = correct(now, 9, 'sodiumBicarbonate');
    if (found.kind !== 'wait') throw new Error(found.kind);
    expect(found.shareOfDose).toBe(0);
    // 2.8 dKH at 0.6 a day is 4.7 days; longer, since corals slow down as saturation falls.
    expect(found.days!).toBeGreaterThan(4.5);
    expect(found.days!).toBeLessThan(6.5);
  });
});
