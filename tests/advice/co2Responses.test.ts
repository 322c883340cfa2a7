import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../shared/scenario/parse';
import { usualOptions } from '../../workers/engine/simulation';
import { co2DemandG } from '../../workers/studies/drill/co2Demand';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { tryResponses } from '../../workers/studies/drill/responses';
import { patience, runsOf } from '../laws/size';
import { readColumn } from '../../shared/trace/trace';
import { quietTank } from '../runs/quietTank';
import { anyStuckPump, goOn, stuckPump } from './anyDrill';

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
