import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { runDay, type Day, type Tried } from '../../workers/engine/firstDay';
import { LeftRange } from '../../workers/engine/leftRange';
import { settle, type Settled } from '../../workers/engine/settle';
import { usualOptions, type SimulationOptions } from '../../workers/engine/simulation';
import { anyTurn } from '../advice/anyTurn';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';

/**
 * So near where it began ends the settled day, in the CO2's logarithm: 0.02 µmol/kg of carbon, a
 * step's error. Where one step more or fewer decides it, the tank is held ten times tighter.
 */
const NEAR = 1e-4;
const tighter = { toleranceUmolPerKg: usualOptions.toleranceUmolPerKg / 10 };
const SELDOM = 0.01;

/** How far from where it began the day ends on which a tank settled. */
function gapOf(scenario: Scenario, found: Settled, options: SimulationOptions): number {
  const { endPco2Uatm } = runDay(scenario, found, options);
  return Math.abs(Math.log(endPco2Uatm / found.pco2Uatm));
}

/** An ordinary day of a tank; undefined where it dries up within it, and has none to settle on. */
function dayOf(scenario: Scenario, tried: Tried): Day | undefined {
  try {
    return runDay(scenario, tried, usualOptions);
  } catch (error) {
    const isDry = error instanceof LeftRange && ['noWater', 'tooSalty'].includes(error.why.kind);
    if (isDry) return undefined;
    throw error;
  }
}

/** The simplest that could be done: the tank runs on from the air until a day ends as it began. */
function restsByItself(scenario: Scenario, { pco2Uatm: air, ...begun }: Settled): boolean {
  let [pco2Uatm, growth]: [number, Tried] = [air, { ...begun, pco2Uatm: air }];
  for (let day = 0; day < 60; day++) {
    const came = dayOf(scenario, { ...growth, pco2Uatm });
    if (!came) return false;
    const { endPco2Uatm, wanted } = came;
    // Above a tenth of an atmosphere nothing lives, and the engine seeks no rest.
    if (endPco2Uatm < 2 || endPco2Uatm > 1e5) return false;
    const still = Math.abs(wanted.omegaReference - growth.omegaReference) < 1e-5;
    if (still && Math.abs(Math.log(endPco2Uatm / pco2Uatm)) < 1e-6) return true;
    [pco2Uatm, growth] = [endPco2Uatm, { ...wanted, pco2Uatm: endPco2Uatm }];
  }
  return false;
}

const tanks = fc.oneof(
  anyTurn.map(({ truth }) => truth),
  anyScenario.map((one) => ({
    ...one,
    start: { ...one.start, carbon: 'settledCycle' as const },
  })),
);

it(
  'a tank whose days come to rest by themselves starts on its settled day, and that day ends as it began',
  () => {
    let [tried, resting, tightened] = [0, 0, 0];
    fc.assert(
      fc.property(tanks, (scenario) => {
        const found = settle(scenario, usualOptions);
        tried++;
        if (!found.settled) {
          expect(restsByItself(scenario, found)).toBe(false);
          return;
        }
        resting++;
        if (gapOf(scenario, found, usualOptions) < NEAR) return;
        tightened++;
        expect(gapOf(scenario, settle(scenario, tighter), tighter)).toBeLessThan(NEAR);
      }),
      runsOf(500),
    );
    expect(resting).toBeGreaterThan(0.8 * tried);
    expect(tightened).toBeLessThanOrEqual(Math.max(1, SELDOM * tried));
  },
  patience * 4,
);

it('a tank whose corals would take more carbon than comes in settles all the same', () => {
  const corals = { measuredAs: 'area', rateMmolPerM2PerDay: 300 } as const;
  for (const areaM2 of [1, 2, 4]) {
    const tank = scenarioOf({ tank: { volumeL: 30 }, corals: { ...corals, areaM2 } });
    expect(settle(tank, usualOptions).settled, `${areaM2} m² of corals`).toBe(true);
  }
});

it('two tanks alike start alike, though the secant is thrown off in one of them', () => {
  const { known, truth } = fc.sample(anyTurn, { numRuns: 74, seed: 2 })[73]!;
  const [one, other] = [known, truth].map((scenario) => settle(scenario, usualOptions));
  expect([one!.settled, other!.settled]).toEqual([true, true]);
  expect(other!.pco2Uatm / one!.pco2Uatm).toBeCloseTo(1, 1);
});
