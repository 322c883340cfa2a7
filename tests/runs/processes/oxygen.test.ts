import { describe, expect, it } from 'vitest';
import { columns, type ColumnId } from '../../../shared/trace/columns';
import { readColumn } from '../../../shared/trace/trace';
import { newFault } from '../../../shared/scenario/newFault';
import type { Scenario } from '../../../shared/scenario/schema';
import { lineOf } from '../../../shared/verdict/lineResult';
import { run } from '../../../workers/engine/run';
import { usualOptions } from '../../../workers/engine/simulation';
import { misses } from '../../reference/check';
import { quietTank } from '../quietTank';
import { scenarioFromFile } from '../scenarioFiles';
import { oxygenRunChecks } from './checks/oxygen';

const least = (scenario: Scenario) => Math.min(...readColumn(run(scenario).trace, 'oxygen_mg_l'));

describe('oxygen', () => {
  it('is the same by steps of any length while the light comes up', () => {
    const plan = quietTank({
      ...{ days: 2, gas: { kLaPerH: 0.4, enhancement: 'off' } },
      ...{ photosynthesis: { grossMmolPerLPerDay: 2 }, lights: { hours: 8, rampHours: 4 } },
    });
    const [usual, fine] = [
      usualOptions.toleranceUmolPerKg,
      usualOptions.toleranceUmolPerKg / 1000,
    ].map((toleranceUmolPerKg) =>
      readColumn(run(plan, { ...usualOptions, toleranceUmolPerKg }).trace, 'oxygen_saturation_pct'),
    );
    const off = usual!.map((percent, row) => Math.abs(percent - fine![row]!));
    expect(Math.max(...off)).toBeLessThan(0.001);
  });

  it('falls, rises and is taken as reckoned by hand', () => {
    expect(oxygenRunChecks()).toHaveLength(4 + 4 + 9 + 5);
    expect(misses(oxygenRunChecks())).toEqual([]);
  });

  it('moves nothing else, however much is breathed', () => {
    const plan = scenarioFromFile('drill-power-cut.json');
    const usual = run(plan);
    const gasping = run({
      ...plan,
      oxygen: { ...plan.oxygen, stocking: 'crowded', respirationMmolPerLPerDay: 6, perCarbon: 1.4 },
    });
    const isOxygen = (id: ColumnId) => id.startsWith('oxygen');
    for (const { id } of columns) {
      const same = readColumn(usual.trace, id).every(
        (value, i) => value === readColumn(gasping.trace, id)[i],
      );
      expect([id, same]).toEqual([id, !isOxygen(id)]);
    }
  });

  it('is breathed faster in warm water, and no other column moves', () => {
    const plan = {
      ...scenarioFromFile('over-fed.json'),
      days: 3,
      faults: [newFault('heater', { day: 1, hour: 12, endsAfterH: 40, endTempC: 31 })],
    };
    const of = (respirationPerTenDegrees: number) =>
      run({ ...plan, oxygen: { ...plan.oxygen, respirationPerTenDegrees } });
    const [even, usual] = [of(1), of(2)];
    for (const { id } of columns) {
      const [a, b] = [even, usual].map(({ trace }) => readColumn(trace, id));
      const same = a!.every((value, i) => value === b![i]);
      expect([id, same]).toEqual([id, !id.startsWith('oxygen')]);
    }
    expect(usual.closures.elements.O).toBeLessThan(1e-12);
    const steady = { ...plan, faults: [] };
    const [a, b] = [1, 3].map((respirationPerTenDegrees) =>
      readColumn(
        run({ ...steady, oxygen: { ...plan.oxygen, respirationPerTenDegrees } }).trace,
        'oxygen_mg_l',
      ),
    );
    expect(a).toEqual(b);
  });

  it('is a debt where more is breathed than there is, and comes back with the air', () => {
    const plan = scenarioFromFile('drill-power-cut.json');
    const oxygen = { ...plan.oxygen, respirationMmolPerLPerDay: 3 };
    const { trace, closures } = run({ ...plan, oxygen });
    const mgPerL = readColumn(trace, 'oxygen_mg_l');
    expect(Math.min(...mgPerL)).toBeGreaterThan(0);
    expect(Math.min(...mgPerL)).toBeLessThan(1e-6);
    expect(mgPerL.at(-1)).toBeGreaterThan(4.5);
    expect(closures.elements.O).toBeLessThan(1e-12);
  });

  it('follows the air however strong the aeration, in steps that it does not steer', () => {
    const tank = quietTank({ gas: { kLaPerH: 20 }, oxygen: { stocking: 'crowded' } });
    expect(run(tank).lines.find(({ id }) => id === 'oxygenLow')!.firstH).toBeUndefined();
    expect(least(tank)).toBeGreaterThan(6.6);
  });

  it('passes its lines when they say so, and they are the keeper’s to change', () => {
    const still = quietTank({ gas: { kLaPerH: 0 }, oxygen: { respirationMmolPerLPerDay: 1.2 } });
    const mgPerLPerH = (1.2 * 31.998) / 24;
    const startMgPerL = readColumn(run(still).trace, 'oxygen_mg_l')[0]!;
    for (const limit of [4, 2.8, 5.5]) {
      const limits = { ...still.limits, oxygenLowMgPerL: limit };
      const { firstH } = lineOf(run({ ...still, limits }).lines, 'oxygenLow');
      // Crossings are found to a ten-thousandth of a step.
      expect(firstH).toBeCloseTo((startMgPerL - limit) / mgPerLPerH, 3);
    }
  });
});
