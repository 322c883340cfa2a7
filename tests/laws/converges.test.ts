import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { compile } from '../../workers/engine/compile';
import { Simulation } from '../../workers/engine/simulation';
import { anyScenario } from './anyScenario';
import { endOrLeave } from './endOrLeave';
import { patience, runsOf } from './size';
import { isSmooth } from './smooth';

/** Plans without sudden events, and without the corners of a profile joined by straight lines. */
const anyPlan = anyScenario.map((scenario) =>
  scenarioOf({
    ...scenario,
    days: 1,
    additions: [],
    faults: [],
    responses: [],
    temperaturePlan: [],
    room: { ...scenario.room, co2PpmByHour: [] },
    waterChanges: { ...scenario.waterChanges, percent: 0 },
    topOff: { ...scenario.topOff, reservoirL: 0 },
    evaporation: { ...scenario.evaporation, litresPerDay: 0 },
    dosers: scenario.dosers.slice(0, 1).map((doser) => ({ ...doser, mlPerDay: 20 })),
  }),
);

/** Alkalinity and carbon, µmol/kg, each hour of a day; nothing when the day meets such a corner. */
function day(scenario: Scenario, toleranceUmolPerKg: number): number[] | undefined {
  const simulation = new Simulation(compile(scenario, { pco2Uatm: 500 }), { toleranceUmolPerKg });
  const values: number[] = [];
  for (let hour = 1; hour <= 24; hour++) {
    if (endOrLeave(simulation, hour) === 'left') return undefined;
    const { view } = simulation;
    if (!isSmooth(view)) return undefined;
    values.push(view.alkalinityMolPerKg * 1e6, view.dicMolPerKg * 1e6);
  }
  return values;
}

const distance = (a: number[], b: number[]) =>
  a.reduce((worst, value, i) => Math.max(worst, Math.abs(value - b[i]!)), 0);

const LOOSE = 0.2;
const TIGHT = LOOSE / 2 ** 5;
const FINE = 0.0002;
/** What the loose tolerance happens to leave already cannot improve: ten times the tight one. */
const FLOOR_UMOL_PER_KG = 10 * TIGHT;

it(
  'comes closer to the fine run as the tolerance is halved five times, in alkalinity and carbon',
  () => {
    const ratios: number[] = [];
    fc.assert(
      fc.property(anyPlan, (scenario) => {
        const [loose, tight, fine] = [LOOSE, TIGHT, FINE].map((t) => day(scenario, t));
        if (!loose || !tight || !fine) return;
        const [before, after] = [distance(loose, fine), distance(tight, fine)];
        expect(after).toBeLessThanOrEqual(Math.max(0.5 * before, FLOOR_UMOL_PER_KG));
        if (before > FLOOR_UMOL_PER_KG) ratios.push(after / before);
      }),
      runsOf(600),
    );
    expect(ratios.length).toBeGreaterThan(1);
    const middle = ratios.toSorted((a, b) => a - b)[Math.floor(ratios.length / 2)];
    // A thirty-second of the tolerance: an error in proportion would leave that of the distance.
    expect(middle).toBeLessThan(0.1);
  },
  patience,
);
