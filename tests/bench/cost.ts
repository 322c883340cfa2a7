import type { Scenario } from '../../shared/scenario/schema';
import { compile } from '../../workers/engine/compile';
import { run } from '../../workers/engine/run';
import { medianMs, type Print } from './engine';

/** Everything off that can be, or on. */
const withProcesses = (scenario: Scenario, on: boolean): Scenario => ({
  ...scenario,
  corals: { ...scenario.corals, skeletonMgPerCa: on ? 25 : 0, skeletonSrPerCa: on ? 8.8 : 0 },
  filter: { ...scenario.filter, denitrificationPerDay: on ? 0.02 : 0 },
  precipitation: { ...scenario.precipitation, mode: on ? 'enabled' : 'off' },
  photosynthesis: { ...scenario.photosynthesis, refugiumMmolPerLPerDay: on ? 0.2 : 0 },
});

function withPumps(scenario: Scenario, count: number): Scenario {
  const doser = {
    name: 'bicarbonate',
    recipe: [{ additive: 'sodiumBicarbonate' as const, gramsPerL: 1 }],
    mlPerDay: 10,
    stockL: 5,
    schedule: {
      way: 'spread' as const,
      ...{ fromHour: 20, hours: 10, doses: 4, everyMinutes: 60, pumpMlPerMin: 20, weekdays: [] },
    },
  };
  return { ...scenario, dosers: Array.from({ length: count }, () => doser) };
}

/** What a trial costs: by its length, by what goes on in the water, by its pumps. */
export function benchCost(print: Print, typical: Scenario): void {
  const ms = (scenario: Scenario) => medianMs(() => run(scenario), 2, 5);
  for (const days of [30, 90, 180, 365]) print(`cost_${days}_days`, ms({ ...typical, days }), 'ms');
  for (const on of [false, true]) {
    const plan = withProcesses(typical, on);
    print(`cost_${compile(plan).channels.length}_processes_90_days`, ms(plan), 'ms');
  }
  for (const count of [0, 2, 4]) {
    const plan = withPumps(typical, count);
    print(`cost_${compile(plan).devices.length}_devices_90_days`, ms(plan), 'ms');
  }
}
