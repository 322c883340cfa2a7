import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { newFault } from '../../shared/scenario/newFault';
import { scenarioOf } from '../../shared/scenario/write';
import { isUse, readColumn, readLedger } from '../../shared/trace/trace';
import { lineOf } from '../../shared/verdict/lineResult';
import { usePerDay } from '../../shared/verdict/measures';
import { stampedLine } from '../../src/say/verdict/stampedLine';
import { tellVerdict } from '../../src/say/verdict/verdict';
import { run } from '../../workers/engine/run';
import { firstChange } from '../../workers/studies/firstChange';
import { anyScenario } from '../laws/anyScenario';
import { patience, runsOf } from '../laws/size';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { anyTank } from './anyPlan';

const judged = (scenario: Parameters<typeof run>[0]) => {
  const outcome = run(scenario);
  return { outcome, verdict: tellVerdict(scenario, outcome) };
};
const told = (scenario: Parameters<typeof run>[0]) => {
  const { verdict } = judged(scenario);
  return [verdict.headline, ...verdict.details].join(' ');
};

/**
 * A moment may be looked at twice, with exact constants and with those of the parabola beside them,
 * which is within 3e-7 of the exact K (constantsNear.ts): 3e-7 / ln 10 in pH.
 */
const SAME_PH = 3e-7 / Math.LN10;

describe('a verdict', () => {
  it(
    'is at ease exactly when no watched line was crossed, and its extremes hold every row',
    () => {
      fc.assert(
        fc.property(anyScenario, (scenario) => {
          const { outcome, verdict } = judged(scenario);
          const crossed = outcome.crossings.some(({ into }) => into === 'outside');
          expect(verdict.insideLimits).toBe(!crossed && outcome.stopped === undefined);
          const ph = readColumn(outcome.trace, 'ph_nbs');
          const dkh = readColumn(outcome.trace, 'alkalinity_dkh');
          const tempC = readColumn(outcome.trace, 'temperature_c');
          const worst = (id: string) => lineOf(outcome.lines, id).worst + 1e-9;
          expect(Math.max(...ph)).toBeLessThanOrEqual(worst('phHigh') + SAME_PH);
          expect(Math.max(...dkh)).toBeLessThanOrEqual(worst('alkalinityHigh'));
          expect(Math.max(...tempC)).toBeLessThanOrEqual(worst('temperatureHigh'));
          expect(Math.min(...dkh)).toBeGreaterThanOrEqual(worst('alkalinityLow') - 2e-9);
          expect([verdict.headline, ...verdict.details].join()).not.toMatch(/NaN|undefined|Infin/);
        }),
        runsOf(2000, 0.4),
      );
    },
    patience,
  );

  it(
    'judges the change of a day at any moment: no two readings of a day lie farther apart',
    () => {
      fc.assert(
        fc.property(anyTank, fc.integer({ min: 0, max: 23 }), (scenario, hour) => {
          const additions = [1, 2, 3].map((day) => ({
            ...{ day, hour, additive: 'sodiumBicarbonate' as const },
            grams: scenario.tank.volumeL / 40,
          }));
          const { trace, lines } = run({ ...scenario, additions });
          const dkh = [...readColumn(trace, 'alkalinity_dkh')];
          const days = dkh.map((_, i) => dkh.slice(Math.max(0, i - 23), i + 1));
          const widest = Math.max(...days.map((day) => Math.max(...day) - Math.min(...day)));
          expect(lineOf(lines, 'alkalinityChange').worst).toBeGreaterThanOrEqual(widest - 1e-6);
        }),
        runsOf(300),
      );
    },
    patience,
  );

  const heater = (hours: number, endTempC: number) => ({
    ...scenarioFromFile('limewater-holds.json'),
    days: 4,
    faults: [newFault('heater', { day: 1, hour: 6, endsAfterH: hours, endTempC, degreesPerH: 1 })],
  });

  it('is not at ease about a heater at 34 °C, and says when and why', () => {
    const { verdict } = judged(heater(30, 34));
    expect(verdict.insideLimits).toBe(false);
    expect(verdict.broken.map(({ id }) => id)).toContain('temperatureHarm');
    expect(verdict.details.join(' ')).toMatch(/above 30(\.0)? °C from day 1: harm .* oxygen/);
  });

  it('sees the moment of a pour itself, not the step after it', () => {
    const plan = scenarioFromFile('limewater-holds.json');
    const grams = gramsForDkh('sodiumBicarbonate', 1, plan.tank.volumeL);
    const additions = [{ day: 2, hour: 10, additive: 'sodiumBicarbonate' as const, grams }];
    const { trace, lines } = run({ ...plan, days: 3, additions });
    const high = lineOf(lines, 'alkalinityHigh');
    expect(high.worstH).toBe(34);
    // The row of that hour is written after what happens in it.
    expect(high.worst).toBeCloseTo(readColumn(trace, 'alkalinity_dkh')[34]!, 9);
    expect(lineOf(lines, 'alkalinityChange').worst).toBeGreaterThan(0.98);
  });

  it('counts a start outside the limits as outside, from the first moment', () => {
    const plan = scenarioFromFile('limewater-holds.json');
    const { outcome, verdict } = judged({ ...plan, tank: { ...plan.tank, alkalinityDkh: 6.2 } });
    expect(lineOf(outcome.lines, 'alkalinityLow')).toMatchObject({ firstH: 0, already: false });
    expect(verdict.insideLimits).toBe(false);
    expect(verdict.headline).toContain('starts outside your 7');
  });

  it('begins its stamp with alkalinity far outside, not with what is passed first', () => {
    const plan = scenarioFromFile('limewater-holds.json');
    const small = { ...plan, days: 30, tank: { ...plan.tank, volumeL: 75 } };
    const { outcome, verdict } = judged(small);
    const first = outcome.crossings.find(({ into }) => into === 'outside')!;
    expect(first.limit).not.toMatch(/^alkalinity(High|Low)/);
    expect(stampedLine(verdict.broken)!.id).toBe('alkalinityHigh');
    expect(verdict.headline).toContain('no such water stays clear');
    const holds = judged(plan).verdict;
    expect([stampedLine(holds.broken), holds.headline]).toEqual([
      undefined,
      expect.not.stringContaining('stays clear'),
    ]);
  });

  it('calls no band the keeper’s that is an example’s', () => {
    const { verdict } = judged(scenarioFromFile('recovery-from-six.json'));
    expect(verdict.headline).toContain('inside 6–9 so far');
  });

  it('says which lines an easy sentence rests on', () => {
    const text = told(scenarioFromFile('limewater-holds.json'));
    for (const name of ['temperature', 'oxygen', 'salinity', 'un-ionised ammonia', 'sump’s rim']) {
      expect(text).toContain(name);
    }
  });

  it('tells harm of an undosed tank at 2.4 dKH, not that corals slow down', () => {
    const text = told(scenarioFromFile('do-nothing.json'));
    expect(text).toMatch(/below 6(\.0)? dKH from day \d+: stony corals are expected to suffer/);
    expect(text).not.toContain('slow down as');
  });

  it('never asks for a larger reservoir after a failure has emptied it', () => {
    const stuck = scenarioFromFile('drill-stuck-pump.json');
    const { verdict } = judged(stuck);
    expect(verdict.details.join(' ')).toContain('The failure empties the reservoir');
    expect(verdict.details.join(' ')).not.toMatch(/larger/i);
    expect(firstChange(stuck).change).toEqual({});
  });

  it('says that food takes more than was typed as use, and that a pump cannot keep up', () => {
    const plan = scenarioOf({
      type: 'paper-reef/scenario',
      version: 4,
      title: 'fed',
      days: 3,
      tank: { volumeL: 100, alkalinityDkh: 8 },
      corals: { useDkhPerDay: 0.01 },
      food: { gramsPerDay: 5 },
      dosers: [
        {
          name: 'slow one',
          recipe: [{ additive: 'sodiumBicarbonate', gramsPerL: 50 }],
          mlPerDay: 500,
          schedule: { way: 'doses', hours: 2, doses: 4, pumpMlPerMin: 2 },
        },
      ],
    });
    expect(told(plan)).toContain('Food and nitrate alone take');
    expect(told(plan)).toMatch(
      /“slow one” is too slow for its hours: of 500 mL a day it gives 240/,
    );
  });
});

describe('what is called use', () => {
  it(
    'is what was typed on the first day, food and nitrate included, whatever the saturation',
    () => {
      fc.assert(
        fc.property(anyTank, (tank) => {
          const scenario = {
            ...tank,
            days: 1,
            corals: { ...tank.corals, growthPercentPerDay: 0 },
          };
          const { trace, settled } = run(scenario);
          fc.pre(settled);
          const food = trace.ledger
            .filter(({ role }) => role === 'life')
            .reduce((sum, { id }) => sum - readLedger(trace, id).at(-1)!, 0);
          const typed = scenario.corals.useDkhPerDay;
          expect(Math.abs(usePerDay(trace, 0, 24) - Math.max(typed, food))).toBeLessThan(2e-3);
        }),
        runsOf(1000),
      );
    },
    patience,
  );

  it('leaves chalk out, and counts each process by its role', () => {
    const stuck = scenarioFromFile('drill-doser-stuck.json');
    const chalky = {
      ...stuck,
      precipitation: { ...stuck.precipitation, mode: 'guarded' as const },
    };
    const { trace } = run(chalky);
    const chalk = trace.ledger.filter(({ role }) => role === 'chalk').map(({ id }) => id);
    expect(chalk).toEqual(['precipitation']);
    expect(-readLedger(trace, 'precipitation').at(-1)!).toBeGreaterThan(1);
    expect(Math.abs(usePerDay(trace, 0, 24) - stuck.corals.useDkhPerDay)).toBeLessThan(0.5);
    const counted = trace.ledger.filter(({ role }) => isUse(role)).map(({ id }) => id);
    expect(counted).toContain('calcification');
    expect(counted).not.toContain('topOff');
  });

  it('says of a level that does not move where it is, not between what and what', () => {
    const still = scenarioOf({
      ...{ days: 10, tank: { alkalinityDkh: 8.5 } },
      corals: { useDkhPerDay: 0 },
      food: { gramsPerDay: 0 },
    });
    expect(told(still)).toContain('holds 8.5 dKH for 10 days');
  });
});
