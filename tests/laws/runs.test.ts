import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviceKinds } from '../../shared/devices/registry';
import { processes } from '../../shared/processes/registry';
import type { Scenario } from '../../shared/scenario/schema';
import { dissolvedIds, poolIds } from '../../shared/species/species';
import { BLOCK_SIZE } from '../../shared/species/block';
import { compile } from '../../workers/engine/compile';
import { run } from '../../workers/engine/run';
import { Simulation } from '../../workers/engine/simulation';
import { anyScenario } from './anyScenario';
import { endOrLeave } from './endOrLeave';
import { patience, runsOf } from './size';
import { isSmooth } from './smooth';

/** Whether nothing that is counted in moles or kilograms has fallen below nothing. */
function negative({ books }: Simulation): string[] {
  const vessels = books.amounts.length - poolIds.length;
  const names = [...dissolvedIds, 'water'];
  return Array.from(books.amounts.subarray(0, vessels)).flatMap((amount, account) => {
    const name = names[account % BLOCK_SIZE]!;
    const outside = Math.floor(account / BLOCK_SIZE) === 1;
    return amount < 0 && !outside && !name.startsWith('untracked') ? [`${name}: ${amount}`] : [];
  });
}

interface Order {
  readonly registry: typeof processes;
  readonly kinds: typeof deviceKinds;
}

const anyOrderOf = <T>(all: readonly T[]) =>
  fc.shuffledSubarray([...all], { minLength: all.length });

/** Amounts hour by hour, until the water meets a corner of a rate. */
function hourly(scenario: Scenario, { registry, kinds }: Order): Float64Array[] {
  const simulation = new Simulation(compile(scenario, { registry, kinds, pco2Uatm: 500 }));
  const rows: Float64Array[] = [];
  for (let hour = 1; hour <= scenario.days * 24; hour++) {
    if (endOrLeave(simulation, hour) === 'left') break;
    if (!isSmooth(simulation.view)) break;
    rows.push(simulation.books.tank.slice());
  }
  return rows;
}

describe('any tank with any plan', () => {
  it(
    'runs to its end with finite numbers, every element accounted for and every change booked',
    () => {
      fc.assert(
        fc.property(anyScenario, (scenario) => {
          const { trace, closures } = run(scenario);
          expect(new Float64Array(trace.buffer).every(Number.isFinite)).toBe(true);
          expect(closures.alkalinityUmolPerKg).toBeLessThan(1e-3);
          for (const off of Object.values(closures.elements)) expect(off).toBeLessThan(1e-12);
        }),
        runsOf(1000),
      );
    },
    patience,
  );

  it(
    'never has less than nothing of anything, at any step',
    () => {
      fc.assert(
        fc.property(anyScenario, (scenario) => {
          const simulation = new Simulation(compile(scenario));
          simulation.onStep = () => expect(negative(simulation)).toEqual([]);
          endOrLeave(simulation, scenario.days * 24);
        }),
        runsOf(500),
      );
    },
    patience,
  );

  it(
    'gives the same numbers in whatever order its processes and devices are registered',
    () => {
      let compared = 0;
      const anyOrder = fc.record({
        registry: anyOrderOf(processes),
        kinds: anyOrderOf(deviceKinds),
      });
      fc.assert(
        fc.property(anyScenario, anyOrder, (scenario, order) => {
          const usual = hourly(scenario, { registry: processes, kinds: deviceKinds });
          compared += usual.length;
          const start = compile(scenario, { pco2Uatm: 500 }).books.tank;
          hourly(scenario, order).forEach((row, hour) => {
            row.forEach((amount, i) => {
              const other = usual[hour]?.[i] ?? NaN;
              const size = Math.max(Math.abs(other), Math.abs(start[i]!));
              expect(Math.abs(amount - other)).toBeLessThanOrEqual(1e-9 * size);
            });
          });
        }),
        runsOf(300),
      );
      expect(compared).toBeGreaterThan(50);
    },
    patience,
  );
});
