import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { besides } from '../../src/store/besides';
import { everythingText, readEverything } from '../../src/store/everything';
import { inks } from '../../src/store/inks';
import type { Tank } from '../../src/store/tanks';
import { anyScenario } from '../laws/anyScenario';
import { patience, runsOf } from '../laws/size';
import { anyReading } from '../log/anyReading';

const anyMoment = fc.constantFrom('', '2026-03-04T10:30', '2031-12-31T23:59');

const anyPlans = fc
  .array(fc.tuple(fc.string({ minLength: 1, maxLength: 20 }), anyScenario), {
    minLength: 1,
    maxLength: inks.length,
  })
  .map((all) => all.map(([name, scenario], ink) => ({ id: `plan-${ink}`, name, ink, scenario })));

/** What it runs by since when, and by what before. */
const anyPast = fc
  .tuple(
    anyMoment,
    fc.array(fc.record({ since: anyMoment, scenario: anyScenario }), { maxLength: 2 }),
  )
  .map(([since, before]) => ({ since, before }));

const anyTank: fc.Arbitrary<Omit<Tank, 'id'>> = fc
  .tuple(
    fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' }).filter((s) => s.trim() !== ''),
    anyPlans,
    fc.array(anyReading, { maxLength: 5 }),
    anyPast,
  )
  .map(([name, plans, readings, ran]) => ({
    name,
    bench: { plans, selected: plans.at(-1)!.id, ...ran },
    log: { ...emptyLog, readings: readings.toSorted((a, b) => a.at.localeCompare(b.at)) },
  }));

const anyTanks: fc.Arbitrary<Tank[]> = fc
  .array(anyTank, { minLength: 1, maxLength: 4 })
  .map((tanks) => tanks.map((tank, i) => ({ id: `tank-${i + 1}`, ...tank })));

describe('everything in one file', () => {
  it(
    'comes back identical',
    () => {
      fc.assert(
        fc.property(anyTanks, (tanks) => {
          const preferences = { theme: 'dark', volume: 'US gal' };
          const read = readEverything(everythingText({ tanks, preferences }));
          expect(read).toEqual({ ok: true, everything: { tanks, preferences } });
          if (read.ok) expect(besides(tanks, read.everything.tanks)).toEqual([]);
          if (read.ok) expect(besides([], read.everything.tanks)).toEqual(tanks);
        }),
        runsOf(500),
      );
    },
    patience,
  );

  it('stands beside tanks of the same id that are others', () => {
    const [tank] = fc.sample(anyTanks, { numRuns: 1, seed: 1 })[0]!;
    const [added] = besides([{ ...tank!, name: 'mine' }], [tank!]);
    expect(added).toEqual({ ...tank, id: `${tank!.id}-2` });
  });

  it(
    'that was damaged is refused with a sentence, or read whole; it never throws',
    () => {
      const [tanks] = fc.sample(anyTanks, { numRuns: 1, seed: 2 });
      const text = everythingText({ tanks: tanks!.slice(0, 1), preferences: {} });
      const anyDamage = fc.tuple(
        fc.integer({ min: 0, max: text.length - 1 }),
        fc.integer({ min: 0, max: 40 }),
        fc.string({ maxLength: 8 }),
      );
      let refusals = 0;
      fc.assert(
        fc.property(anyDamage, ([at, cut, put]) => {
          const read = readEverything(text.slice(0, at) + put + text.slice(at + cut));
          if (read.ok) return;
          refusals++;
          for (const problem of read.problems) expect(problem).toMatch(/^[A-Z].{20,}[.?]$/);
        }),
        runsOf(10_000),
      );
      expect(refusals).toBeGreaterThan(0);
    },
    patience,
  );
});
