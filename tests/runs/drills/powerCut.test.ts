import { describe, expect, it } from 'vitest';
import { estimatedCoolingHours } from '../../../shared/faults/coolingHours';
import { breathedMmolPerLPerDay } from '../../../shared/processes/unseenRespiration';
import { newFault } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';
import { oxygenKLaPerH } from '../../../shared/seawater/oxygen';
import { readColumn } from '../../../shared/trace/trace';
import { lineOf } from '../../../shared/verdict/lineResult';
import { runDrill } from '../../../workers/studies/drill/drillRun';
import { quietTank } from '../quietTank';
import { scenarioFromFile } from '../scenarioFiles';

const AT_H = 26;
const GAS_PERCENT = 10;
type Fault = Parameters<typeof newFault>[1];
const cut = (scenario: Scenario, own: Fault): Scenario => ({
  ...scenario,
  days: 3,
  responses: [],
  faults: [newFault('powerCut', { day: 2, hour: 2, endsAfterH: 20, ...own })],
});
const column = (
  scenario: Scenario,
  id: 'oxygen_mg_l' | 'oxygen_saturation_pct' | 'temperature_c',
) => readColumn(runDrill(scenario).trace, id);

/** The tanks on the shelf, their lights off when the power goes at 2 in the night. */
const tanks = [
  'limewater-holds.json',
  'over-fed.json',
  'pico-tank.json',
  'recovery-from-six.json',
  'drill-second-switch.json',
  'drill-power-cut.json',
  'calcium-reactor-raceway.json',
].map((file) => [file, scenarioFromFile(file)] as const);

describe.each(tanks)('a power cut in %s', (_, scenario) => {
  const closed = cut(scenario, { gasPercent: 0, cooling: 'none' });
  const still = cut(scenario, { gasPercent: GAS_PERCENT, cooling: 'none' });
  const { food, tank } = scenario;
  // Beside what is breathed: two for each nitrogen of food that bacteria take.
  const nitrogenMol =
    (food.gramsPerDay * food.nitrogenPercent * food.releasedPercent) / 1e4 / 14.007;
  const bacteriaMmolPerLPerDay = (2000 * nitrogenMol) / tank.volumeL;
  const mgPerLPerH = ((breathedMmolPerLPerDay(scenario) + bacteriaMmolPerLPerDay) * 31.998) / 24;

  it.each([
    ['oxygenLow', 4],
    ['oxygenHarm', 2.8],
  ] as const)('passes %s, %f mg/L, when hand arithmetic says so', (id, limit) => {
    const startMgPerL = column(closed, 'oxygen_mg_l')[AT_H]!;
    const byHandH = (startMgPerL - limit) / mgPerLPerH;
    const closedH = lineOf(runDrill(closed).lines, id).firstH! - AT_H;
    expect(closedH / byHandH).toBeGreaterThan(0.99);
    expect(closedH / byHandH).toBeLessThan(1.01);
    const saturatedMgPerL = startMgPerL / (column(still, 'oxygen_saturation_pct')[AT_H]! / 100);
    const kLaPerH = oxygenKLaPerH((scenario.gas.kLaPerH * GAS_PERCENT) / 100, scenario.tank.tempC);
    // A still surface brings at most what it brings at the line, from the first minute on.
    const mostMgPerLPerH = kLaPerH * (saturatedMgPerL - limit);
    const slowest = mgPerLPerH - mostMgPerLPerH;
    const stillH = (lineOf(runDrill(still).lines, id).firstH ?? Infinity) - AT_H;
    expect(stillH).toBeGreaterThan(closedH);
    if (slowest > 0) expect(stillH).toBeLessThan((startMgPerL - limit) / slowest);
  });
});

describe('the temperature in a power cut', () => {
  const tank = quietTank({ tank: { tempC: 26 }, evaporation: { surfaceM2: 0.5, airTempC: 18 } });
  const at = (own: Fault, hours: number) => column(cut(tank, own), 'temperature_c')[AT_H + hours]!;

  it('stays, unless the room is said to draw it', () => {
    expect(at({ cooling: 'none' }, 10)).toBe(26);
  });

  it('nears the room’s with the keeper’s own time constant, and is heated back with it', () => {
    expect(at({ cooling: 'own', coolingHours: 5 }, 5)).toBeCloseTo(26 - 8 * (1 - Math.exp(-1)), 9);
    const back = at({ cooling: 'own', coolingHours: 5, endsAfterH: 5 }, 10);
    expect(back).toBeCloseTo(26 - 8 * (1 - Math.exp(-1)) * Math.exp(-1), 9);
  });

  it('takes a time constant from volume and surface: a box of glass under open water', () => {
    // By hand: 300 L under 0.5 m² is 0.6 m deep, 2.197 m² of glass at 5 W, 0.5 m² of water at 20 W.
    expect(estimatedCoolingHours(tank)).toBeCloseTo((4080 * 300) / (10.985 + 10) / 3600, 2);
    // 12 L are no wider than 1.5 faces of a cube, 0.0786 m²: 0.153 m deep, 0.2499 m² of glass.
    const pico = { ...tank, tank: { ...tank.tank, volumeL: 12 } };
    expect(estimatedCoolingHours(pico)).toBeCloseTo((4080 * 12) / (1.2497 + 1.5724) / 3600, 2);
    const hours = estimatedCoolingHours(tank);
    expect(at({ cooling: 'estimated' }, 6)).toBeCloseTo(26 - 8 * (1 - Math.exp(-6 / hours)), 9);
  });

  it('draws a failed heater’s water on from where it is', () => {
    const heater = newFault('heater', {
      day: 2,
      hour: 2,
      endsAfterH: 20,
      endTempC: 20,
      degreesPerH: 1,
    });
    const own = cut(tank, { cooling: 'own', coolingHours: 5 });
    const both = { ...own, faults: [...own.faults, heater] };
    expect(column(both, 'temperature_c')[AT_H + 4]).toBeCloseTo(22 - 4 * (1 - Math.exp(-4 / 5)), 9);
  });
});
