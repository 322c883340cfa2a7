import { expect, it } from 'vitest';
import fc from 'fast-check';
import { Broyden, type Pair } from '../../workers/engine/broyden';
import { settle, settling } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import type { Scenario } from '../../shared/scenario/schema';
import { drillFiles, scenarioFiles, scenarioFromFile } from './scenarioFiles';

it('finds where a straight map rests in as many steps as it has slopes to learn', () => {
  const slope = fc.double({ min: -0.3, max: 0.3, noNaN: true });
  const place = fc.double({ min: -0.4, max: 0.4, noNaN: true });
  fc.assert(
    fc.property(slope, slope, slope, slope, place, place, (a, b, c, d, u, v) => {
      // Gay 1979 (from memory): Broyden's first method ends on a straight map of n numbers within 2n steps.
      const gapOf = ([x, y]: Pair): Pair => [
        (a - 1) * (x - u) + b * (y - v),
        c * (x - u) + (d - 1) * (y - v),
      ];
      const search = new Broyden();
      let at: Pair = [0, 0];
      for (let step = 0; step < 4; step++) at = search.next(at, gapOf(at));
      expect(Math.hypot(at[0] - u, at[1] - v)).toBeLessThan(1e-9);
    }),
  );
});

/** Days that the run-in takes. */
function daysOf(scenario: Scenario, near?: ReturnType<typeof settle>): number {
  const search = settling(scenario, usualOptions, near);
  let days = 0;
  while (!search.next().done) days++;
  return days;
}

it.each([...scenarioFiles, ...drillFiles])(
  '%s settles within six days, and a tank much like it from there within four',
  (name) => {
    const scenario = scenarioFromFile(name);
    const near = settle(scenario, usualOptions);
    const { corals } = scenario;
    const thirstier = {
      ...scenario,
      corals: { ...corals, useDkhPerDay: 1.05 * corals.useDkhPerDay },
    };
    expect(daysOf(scenario)).toBeLessThanOrEqual(6);
    expect(daysOf(thirstier, near)).toBeLessThanOrEqual(4);
  },
);
