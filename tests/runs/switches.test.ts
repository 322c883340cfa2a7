import { describe, expect, it } from 'vitest';
import { saltKg, solutionKg } from '../../shared/species/block';
import { readColumn } from '../../shared/trace/trace';
import { compile } from '../../workers/engine/compile';
import { run } from '../../workers/engine/run';
import { Simulation } from '../../workers/engine/simulation';
import { volumeL } from '../../workers/engine/tankView';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { switchesChecks } from './checks/switches';
import { quietTank } from './quietTank';

const RIM_L = 47;
const SPILL_L = 0.4;

/** A tank that runs over all the time: when each spill begins and ends, and what the books hold then. */
function spills(stopsH: readonly number[]): { timeH: number; litres: number }[] {
  const scenario = quietTank({
    tank: { volumeL: 45 },
    outflows: { spareL: RIM_L - 45 },
    topOff: { reservoirL: 500 },
    faults: [{ kind: 'siphon', day: 1, hour: 0, endsAfterH: 24, litresPerH: 10 }],
  });
  const plan = compile(scenario);
  const { tank } = plan.books;
  const turns: { timeH: number; litres: number }[] = [];
  const devices = plan.devices.map((device): typeof device => ({
    ...device,
    act(view, plant) {
      const before = device.pipes[0]?.kgPerH;
      device.act(view, plant);
      if (device.id !== 'overflow' || device.pipes[0]?.kgPerH === before) return;
      const litres = volumeL(saltKg(tank), solutionKg(tank), scenario.tank.tempC);
      turns.push({ timeH: view.timeH, litres });
    },
  }));
  const simulation = new Simulation({ ...plan, devices });
  for (const stopH of stopsH) simulation.advanceTo(stopH);
  return turns;
}

describe('pumps and sensors', () => {
  it(
    'switch to the second when arithmetic says',
    () => {
      expect(switchesChecks()).toHaveLength(5);
      expect(misses(switchesChecks())).toEqual([]);
    },
    patience,
  );

  it('meet a mark to a hundredth of a millilitre, though a run stops a hair before it', () => {
    const turns = spills([2]);
    expect(turns.length).toBeGreaterThan(50);
    // The look at which it turns is 0.2 s beyond its moment.
    const hair = turns.slice(0, 20).map(({ timeH }) => timeH - 0.2 / 3600 - 5e-7);
    for (const { litres } of [...turns, ...spills([...hair, 2])]) {
      const offL = [RIM_L, RIM_L - SPILL_L].map((markL) => Math.abs(litres - markL));
      expect(Math.min(...offL)).toBeLessThan(1e-5);
    }
  });

  it(
    'leave the reservoir dry, and the tank falling, once it has given all it had',
    () => {
      const { trace } = run(
        quietTank({
          days: 4,
          evaporation: { litresPerDay: 6 },
          topOff: { reservoirL: 9, refillEveryDays: 0 },
        }),
      );
      const reservoir = readColumn(trace, 'reservoir_l');
      expect(reservoir.at(-1)).toBe(0);
      expect(reservoir[30]).toBeGreaterThan(0);
      expect(readColumn(trace, 'topoff_l').at(-1)).toBeCloseTo(9, 9);
      expect(readColumn(trace, 'volume_l').at(-1)).toBeCloseTo(300 - (24 - 9), 1);
    },
    patience,
  );

  it(
    'draw from a bottle what was set, and go on from a new bottle when it is empty',
    () => {
      const bottle = { name: 'soda', recipe: [{ additive: 'sodiumBicarbonate', gramsPerL: 40 }] };
      const dosed = (stockL: number) => {
        const dosers = [{ ...bottle, mlPerDay: 500, stockL }];
        const { trace } = run(quietTank({ days: 4, dosers: dosers as never }));
        return readColumn(trace, 'alkalinity_dkh').at(-1)!;
      };
      expect(dosed(0.5)).toBeCloseTo(dosed(50), 9);
      expect(dosed(50)).toBeGreaterThan(10);
    },
    patience,
  );
});
