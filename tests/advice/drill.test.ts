import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutChalk } from '../../shared/scenario/chalk';
import { parseScenario } from '../../shared/scenario/parse';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { HIGHEST_PH_NBS } from '../../shared/trace/columns';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { oxygenLeft } from '../../shared/verdict/oxygenLeft';
import { passedAnyway } from '../../shared/verdict/anyway';
import { lineOf } from '../../shared/verdict/lineResult';
import { firstFaultH } from '../../shared/verdict/drillOutcome';
import { run } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { co2DemandG } from '../../workers/studies/drill/co2Demand';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { causedLines, courseOf } from '../../workers/studies/drill/passing';
import { dumpAt } from '../../workers/studies/drill/dump';
import { layersOf } from '../../workers/studies/drill/layers';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { tryResponses } from '../../workers/studies/drill/responses';
import { worstDump } from '../../workers/studies/drill/worstDump';
import { patience, runsOf } from '../laws/size';
import { readColumn } from '../../shared/trace/trace';
import { quietTank } from '../runs/quietTank';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { anyTank } from './anyPlan';

/** Two runs of the engine are the same within a tenth of what its tolerance may move, and a minute. */
const SAME_PH = 1e-4;
const SAME_H = 1 / 60;

const goOn = async () => true;
const stuckPump = scenarioFromFile('drill-stuck-pump.json');
const answerOf = async (scenario: Scenario) => (await rehearse(scenario, usualOptions, goOn))!;
const worst = (lines: Parameters<typeof lineOf>[0], id = 'phHigh') => lineOf(lines, id).worst;

/** A tank on limewater whose pump sticks. */
const anyStuckPump = fc
  .record({
    tank: anyTank,
    gramsPerL: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
    hour: fc.integer({ min: 0, max: 23 }),
    hours: fc.double({ min: 0.5, max: 40, noNaN: true }),
  })
  .map(({ tank, gramsPerL, hour, hours }): Scenario => ({
    ...tank,
    topOff: { ...tank.topOff, additive: 'calciumHydroxide', gramsPerL },
    faults: [newFault('topOffOn', { day: 1, hour, endsAfterH: hours })],
  }));

describe('a drill', () => {
  it(
    'does not blame a failure for what happens without it, and blames it for what it adds',
    async () => {
      // Nothing replaces what the corals take: 7 dKH is passed on the third day whatever fails.
      const undosed = quietTank({
        days: 6,
        corals: { useDkhPerDay: 0.5 },
        evaporation: { litresPerDay: 4 },
        topOff: { reservoirL: 20, pumpLPerH: 6 },
      });
      const told = async (fault: Scenario['faults'][number]) =>
        drillSentences(await answerOf({ ...undosed, faults: [fault] }), undosed).join(' ');
      const still = await told(
        newFault('heater', { day: 2, hour: 2, endsAfterH: 2, endTempC: 25.5 }),
      );
      expect(still).toContain('Not because of the failure: alkalinity goes below 7 dKH');
      expect(still).toContain('takes nothing that is watched beyond your limits that was not');
      const hot = await told(newFault('heater', { day: 2, hour: 2, endsAfterH: 40, endTempC: 34 }));
      expect(hot).toMatch(/^Temperature goes above 27 °C.*pH peaks at [\d.]+, inside your limit/);
      expect(hot).toContain('Not because of the failure: alkalinity goes below 7 dKH');
    },
    patience,
  );

  it('has one idea of blame: what its sentences do not blame it for, its acts are not measured by', () => {
    const undosed = quietTank({ days: 6, corals: { useDkhPerDay: 0.5 } });
    // Warm corals take more: 7 dKH is passed sooner, and no farther than it would be anyway.
    const fault = newFault('heater', { day: 2, hour: 2, endsAfterH: 40, endTempC: 34 });
    const hot = { ...undosed, faults: [fault] };
    const start = settle(hot, usualOptions);
    const course = courseOf(hot, usualOptions, start);
    const calm = courseOf(undosed, usualOptions, start, firstFaultH(hot));
    const low = lineOf(course.lines, 'alkalinityLow');
    expect(low.firstH).toBeLessThan(lineOf(calm.lines, 'alkalinityLow').firstH! - SAME_H);
    expect(passedAnyway(course.lines, calm.lines)).toContain(low);
    const caused = causedLines(course, calm);
    expect(caused.map(({ id }) => id)).toContain('temperatureHigh');
    expect(caused).not.toContain(low);
  });

  it(
    'leads with the failure without chalk, never better than with it, and the worst hour is worse',
    async () => {
      await fc.assert(
        fc.asyncProperty(anyStuckPump, async (scenario) => {
          const answer = await answerOf(scenario);
          const own = runDrill(withoutChalk(scenario));
          expect(worst(answer.outcome.lines)).toBe(worst(own.lines));
          const calm = run({ ...withoutChalk(scenario), faults: [] });
          for (const { id } of passedAnyway(own.lines, answer.undisturbed)) {
            expect(lineOf(calm.lines, id).firstH, `${id} is not the failure's`).toBeDefined();
          }
          const outside = (lines: Parameters<typeof lineOf>[0]) => lineOf(lines, 'phHarm').outsideH;
          // Beyond the constants' range both are told as '>9.5'; there, water that chalk has
          // robbed of its carbon holds less hydroxide back.
          if (answer.chalk && worst(own.lines) <= HIGHEST_PH_NBS) {
            expect(worst(answer.chalk.lines)).toBeLessThanOrEqual(worst(own.lines) + SAME_PH);
            expect(outside(answer.chalk.lines)).toBeLessThanOrEqual(outside(own.lines) + SAME_H);
          }
          if (answer.worst) expect(answer.worst.peakPh).toBeGreaterThan(worst(own.lines));
          const told = drillSentences(answer, scenario);
          expect(told.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
          if (answer.chalk) expect(told.at(-1)).toContain('illustration');
          const isNews = (answer.worst?.peakPh ?? 0) > scenario.limits.phHighNbs;
          if (isNews) expect(told[0]).toContain('the worst hour of the day');
        }),
        runsOf(300),
      );
    },
    patience * 3,
  );

  it('lets chalk fall out of the same water as the failure without it', async () => {
    // Limewater takes carbon faster than this air brings it: with chalk its day would settle elsewhere.
    const fast = quietTank({
      days: 3,
      ...{ tank: { volumeL: 914 }, corals: { useDkhPerDay: 0 }, gas: { kLaPerH: 0.28 } },
      evaporation: { litresPerDay: 27 },
      topOff: {
        ...{ reservoirL: 73, pumpLPerH: 9, refillEveryDays: 2 },
        ...{ additive: 'calciumHydroxide', gramsPerL: 0.4 },
      },
      photosynthesis: { grossMmolPerLPerDay: 0.5 },
      faults: [newFault('topOffOn', { day: 1, hour: 21, endsAfterH: 2 })],
    });
    expect(settle(withoutChalk(fast), usualOptions).settled).toBe(false);
    const { chalk, outcome } = await answerOf(fast);
    expect(worst(chalk!.lines)).toBeLessThanOrEqual(worst(outcome.lines) + SAME_PH);
  });

  it('says when the reservoir would have been empty although the failure was noticed before', async () => {
    const early = {
      ...stuckPump,
      faults: stuckPump.faults.map((f) => ({ ...f, endsAfterH: 1.5 })),
    };
    const answer = await answerOf(early);
    expect(answer.outcome.switchings.some(({ dry }) => dry)).toBe(false);
    expect(drillSentences(answer, early).join(' ')).toMatch(
      /If nobody notices, the reservoir is empty at 05:2\d and pH peaks at 9\.\d+/,
    );
  });

  it('gives one plan one number for its full dump, wherever it is asked', () => {
    const plan = { ...stuckPump, faults: [] };
    const asked = worstDump(plan)!;
    const nothing = layersOf(plan, asked.clockHour).find(({ stop }) => stop.id === 'nothing')!;
    const drilled = runDrill(dumpAt(plan, asked.clockHour));
    expect(asked.peakPh).toBeCloseTo(worst(drilled.lines), 6);
    // Followed for longer, what is left alone may still creep up by what a probe cannot tell.
    expect(Math.abs(nothing.peakPh - asked.peakPh)).toBeLessThan(0.05);
    expect(nothing.peakPh).toBeGreaterThanOrEqual(asked.peakPh - 1e-9);
  });

  it('says so when the trial ends before anything breaks', async () => {
    const dries = {
      ...stuckPump,
      days: 14,
      topOff: { ...stuckPump.topOff, reservoirL: 0 },
      evaporation: { ...stuckPump.evaporation, litresPerDay: stuckPump.tank.volumeL * 0.12 },
      faults: [newFault('heater', { day: 13, hour: 2 })],
    };
    const answer = await answerOf(dries);
    expect(answer.outcome.stopped).toBeDefined();
    const told = drillSentences(answer, dries).join(' ');
    expect(told).toContain('The trial ends before anything breaks');
    expect(told).not.toContain('NaN');
  });

  it('names oxygen first in a power cut', async () => {
    const own = scenarioFromFile('drill-power-cut.json');
    const told = drillSentences(await answerOf(own), own);
    expect(told[0]).toMatch(
      /^Oxygen goes first: below 4 mg\/L after \d+ min to \d+ min, below 2\.8 mg\/L after .* h\./,
    );
    expect(told[0]).toContain('nobody has measured it');
    expect(told[1]).toContain('pH');
    expect(told[1]).toContain('oxygen goes below 4 mg/L');
    const typed = { ...own, oxygen: { ...own.oxygen, respirationMmolPerLPerDay: 2 } };
    expect(drillSentences(await answerOf(typed), typed)[0]).toContain('as you typed it');
    expect(drillSentences(await answerOf(stuckPump), stuckPump).join()).not.toContain('Oxygen');
  });
});

describe('a power cut', () => {
  const anyCut = fc
    .record({
      tank: anyTank,
      hour: fc.integer({ min: 0, max: 23 }),
      gasPercent: fc.double({ min: 0, max: 100, noNaN: true }),
      stocking: fc.constantFrom('few' as const, 'usual' as const, 'crowded' as const),
    })
    .map(({ tank, hour, gasPercent, stocking }): Scenario => ({
      ...tank,
      oxygen: { ...tank.oxygen, stocking },
      faults: [newFault('powerCut', { day: 1, hour, endsAfterH: 12, gasPercent })],
    }));

  it(
    'leads with oxygen, never sooner than with no air at all, and is at ease only where it lasts',
    async () => {
      let passed = 0;
      await fc.assert(
        fc.asyncProperty(anyCut, async (scenario) => {
          const answer = await answerOf(scenario);
          const told = drillSentences(answer, scenario);
          expect(told[0]).toMatch(/^Oxygen/);
          expect(told.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
          const left = oxygenLeft(answer, scenario);
          for (const { afterH, soonestH } of left) {
            if (afterH === undefined) continue;
            passed++;
            expect(soonestH).toBeLessThanOrEqual(afterH + SAME_H);
          }
          const isPassed = left.some(({ afterH }) => afterH !== undefined);
          if (isPassed) expect(told.join(' ')).not.toContain('Everything that is watched stays');
          if (answer.soonest && left[0]?.afterH !== undefined) {
            expect(answer.soonest.afterH).toBeLessThan(left[0].afterH);
          }
        }),
        runsOf(100),
      );
      expect(passed).toBeGreaterThan(3);
    },
    patience,
  );
});

describe('responses with CO2', () => {
  const choices = { kLaPerH: 4, co2Ppm: 5000, co2Hours: 24, changePercent: 20 };

  it(
    'end once pH is back inside, and never drive it below the keeper’s band',
    async () => {
      await fc.assert(
        fc.asyncProperty(anyStuckPump, async (scenario) => {
          const calm = { ...scenario, room: { ...scenario.room, co2Ppm: 500 } };
          const results = (await tryResponses(calm, choices, usualOptions, goOn))!;
          const of = (id: string) => results.find(({ remedy }) => remedy.id === id)!;
          // Nothing that is done about a high pH may take it lower than doing nothing does, and the band.
          const floor = Math.min(calm.limits.phLowNbs, of('stop').lowestPh) - 0.02;
          for (const id of ['carbonated', 'co2Air']) {
            expect(of(id).lowestPh, id).toBeGreaterThanOrEqual(floor);
            expect(of(id).outsideH, id).toBeLessThanOrEqual(of('stop').outsideH + 1e-6);
          }
        }),
        runsOf(100),
      );
    },
    patience,
  );

  it('ask for the carbon dioxide that closed water needs, at S 35 and 25 °C', () => {
    // PyCO2SYS: 0.896 mol for each equivalent of hydroxide, back to the starting pH of 8.244 (NBS).
    const tank = quietTank({
      days: 1,
      tank: { volumeL: 300, alkalinityDkh: 8, tempC: 25 },
      start: { carbon: 'airEquilibrium' },
      room: { co2Ppm: 420 },
      gas: { kLaPerH: 0 },
      additions: [{ day: 1, hour: 1, additive: 'sodiumHydroxide', grams: 12 }],
    });
    const { trace } = runDrill(tank);
    const startPh = readColumn(trace, 'ph_nbs')[0]!;
    expect(startPh).toBeCloseTo(8.244, 2);
    const plan = { ...tank, limits: { ...tank.limits, phHighNbs: startPh } };
    const molPerEq = co2DemandG(plan, trace, 2) / 44.0095 / (12 / 39.997);
    expect(molPerEq).toBeCloseTo(0.896, 2);
    expect(co2DemandG(plan, trace, 0)).toBeCloseTo(0, 3);
  });

  it('are refused above 5,000 ppm, with the place and what is expected', () => {
    const parsed = parseScenario({
      ...stuckPump,
      responses: [{ kind: 'co2Air', day: 1, hour: 9, hours: 5, co2Ppm: 50_000 }],
    });
    expect(parsed.ok ? [] : parsed.problems.map(({ path }) => path)).toEqual([
      'responses[0].co2Ppm',
    ]);
  });
});

it('one failure has one worst hour, whatever hour of its day was asked about', async () => {
  const plan = { ...scenarioFromFile('limewater-holds.json'), responses: [], days: 4 };
  const { clockHour } = plan.start;
  const worsts = [];
  for (const hour of [2, 8, 14, 20]) {
    // All within the first day of the trial, which ends at the hour it began.
    const fault = newFault('topOffOn', { day: hour < clockHour ? 2 : 1, hour, endsAfterH: 6 });
    const answer = await rehearse({ ...plan, faults: [fault] }, usualOptions, async () => true);
    worsts.push(answer!.worst?.peakPh ?? worst(answer!.outcome.lines));
  }
  for (const one of worsts) expect(one).toBeCloseTo(Math.max(...worsts), 6);
});
