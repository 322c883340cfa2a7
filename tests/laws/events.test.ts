import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plant } from '../../shared/devices/device';
import { eventKinds } from '../../shared/events/registry';
import { ClosureCheck } from '../../workers/engine/closures';
import { compile } from '../../workers/engine/compile';
import { Simulation } from '../../workers/engine/simulation';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';

const total = (block: Float64Array) => block.reduce((sum, amount) => sum + amount, 0);

describe.each(eventKinds.map((kind) => [kind.id, kind] as const))('the event %s', (id, kind) => {
  it(
    'happens in order of time, and within the trial',
    () => {
      let seen = 0;
      fc.assert(
        fc.property(anyScenario, (scenario) => {
          const times = kind.occurrences(scenario).map(({ timeH }) => timeH);
          expect(times).toEqual(times.toSorted((a, b) => a - b));
          for (const timeH of times) {
            expect(timeH).toBeGreaterThanOrEqual(0);
            expect(timeH).toBeLessThanOrEqual(scenario.days * 24);
          }
          seen += times.length;
        }),
        runsOf(1000),
      );
      expect(seen).toBeGreaterThan(0);
    },
    patience,
  );

  it(
    'goes through the books: its own row alone, and every element is still there',
    () => {
      let moved = 0;
      fc.assert(
        fc.property(anyScenario, (scenario) => {
          const plan = compile(scenario);
          const check = new ClosureCheck(plan.books);
          const row = plan.ledger.findIndex((entry) => entry.id === id);
          const before = total(plan.books.tank);
          const { view } = new Simulation({ ...plan, events: [] });
          const reasons: string[] = [];
          const plant = {
            transfer(reason, from, to, block) {
              reasons.push(reason);
              const { books } = plan;
              books.transfer(row, books.offsetOf(from), books.offsetOf(to), block);
            },
          } as Plant;
          for (const event of kind.occurrences(scenario).slice(0, 1)) event.apply(view, plant);
          expect(reasons.every((reason) => reason === id)).toBe(true);
          expect(check.measure().alkalinityUmolPerKg).toBeLessThan(1e-6);
          for (const off of Object.values(check.measure().elements))
            expect(off).toBeLessThan(1e-12);
          if (total(plan.books.tank) !== before) moved++;
        }),
        runsOf(1000),
      );
      expect(moved).toBeGreaterThan(0);
    },
    patience,
  );
});
