import { noFactors } from '../../shared/scenario/factors';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviceKinds } from '../../shared/devices/registry';
import type { Scenario } from '../../shared/scenario/schema';
import { solutionKg } from '../../shared/species/block';
import { compile } from '../../workers/engine/compile';
import { Simulation } from '../../workers/engine/simulation';
import { anyScenario } from './anyScenario';
import { endOrLeave } from './endOrLeave';
import { patience, runsOf } from './size';

describe.each(deviceKinds.map((kind) => [kind.id, kind] as const))('the device %s', (_, kind) => {
  const inAnyTank = (law: (scenario: Scenario) => boolean) => {
    let tanks = 0;
    fc.assert(
      fc.property(anyScenario, (scenario) => {
        if (law(scenario)) tanks++;
      }),
      runsOf(300),
    );
    expect(tanks).toBeGreaterThan(0);
  };

  it(
    'brings vessels that hold something sensible, and pipes between vessels that exist',
    () => {
      inAnyTank((scenario) => {
        const { devices } = compile(scenario);
        const vessels = [
          'tank',
          'outside',
          ...devices.flatMap((d) => d.vessels.map(({ id }) => id)),
        ];
        expect(new Set(vessels).size).toBe(vessels.length);
        const built = kind.build(scenario, noFactors);
        for (const { pipes, vessels: own } of built) {
          for (const { from, to } of pipes)
            expect(vessels).toEqual(expect.arrayContaining([from, to]));
          for (const { contents } of own) {
            expect(solutionKg(contents)).toBeGreaterThanOrEqual(0);
            expect(contents.every((amount) => amount >= 0)).toBe(true);
          }
        }
        return built.length > 0;
      });
    },
    patience,
  );

  it(
    'sets flows that are finite and not negative, and acts next at a later moment',
    () => {
      inAnyTank((scenario) => {
        const simulation = new Simulation(compile(scenario));
        const ids = kind.build(scenario, noFactors).map(({ id }) => id);
        const own = simulation.plan.devices.filter(({ id }) => ids.includes(id));
        simulation.onStep = () => {
          for (const { kgPerH } of own.flatMap(({ pipes }) => pipes)) {
            expect(kgPerH).toBeGreaterThanOrEqual(0);
            expect(kgPerH).toBeLessThan(Infinity);
          }
        };
        for (let hour = 0.5; hour <= Math.min(24, scenario.days * 24); hour += 0.5) {
          if (endOrLeave(simulation, hour) === 'left') break;
          for (const device of own) expect(device.nextClockH(hour)).toBeGreaterThan(hour);
        }
        return own.length > 0;
      });
    },
    patience,
  );

  it(
    'books its pipes under names that no other row has',
    () => {
      inAnyTank((scenario) => {
        const rows = compile(scenario).ledger.map(({ id }) => id);
        const pipes = kind
          .build(scenario, noFactors)
          .flatMap((device) => device.pipes.map(({ id }) => id));
        expect(new Set(rows).size).toBe(rows.length);
        expect(rows).toEqual(expect.arrayContaining(pipes));
        return kind.build(scenario, noFactors).length > 0;
      });
    },
    patience,
  );
});
