import fc from 'fast-check';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { lineOf } from '../../shared/verdict/lineResult';
import { usualOptions } from '../../workers/engine/simulation';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { anyTank } from './anyPlan';

/** Two runs of the engine are the same within a tenth of what its tolerance may move, and a minute. */
export const SAME_PH = 1e-4;
export const SAME_H = 1 / 60;

export const goOn = async () => true;
export const stuckPump = scenarioFromFile('drill-stuck-pump.json');
export const answerOf = async (scenario: Scenario) =>
  (await rehearse(scenario, usualOptions, goOn))!;
export const worst = (lines: Parameters<typeof lineOf>[0], id = 'phHigh') =>
  lineOf(lines, id).worst;

/** A tank on limewater whose pump sticks. */
export const anyStuckPump = fc
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
