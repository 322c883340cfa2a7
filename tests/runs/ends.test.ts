import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withValue } from '../../shared/scenario/change';
import { fieldAt, type FieldPath } from '../../shared/scenario/fields';
import { parseScenario } from '../../shared/scenario/parse';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { columns } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { stoppedSentence } from '../../src/say/verdict/stopped';
import { patience, runsOf } from '../laws/size';
import { scenarioFiles, scenarioFromFile } from './scenarioFiles';

const DAYS = 7;
/** What may be below nothing: more acid than base. */
const SIGNED = new Set<string>(['alkalinity_dkh', 'alkalinity_umol_kg']);

/** Every place of a scenario where something stands. */
const leaves = (value: unknown, path: FieldPath = []): FieldPath[] =>
  typeof value !== 'object' || value === null
    ? [path]
    : Object.entries(value).flatMap(([key, inner]) =>
        leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]),
      );

/** What stands at the ends of what a field takes: its least and its most, or any of its choices. */
function endsOf(path: FieldPath): readonly unknown[] {
  const field = fieldAt(path);
  return field?.quantity ? [field.quantity.min, field.quantity.max] : (field?.options ?? []);
}

const bases = scenarioFiles.map(scenarioFromFile);

/** A scenario of ours with one or two settings at an end of their ranges. */
const anyEnds = fc
  .record({
    base: fc.nat(bases.length - 1),
    turned: fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 2 }),
  })
  .map(({ base, turned }): Scenario =>
    turned.reduce((scenario, [place, end]) => {
      const paths = leaves(scenario).filter((path) => endsOf(path).length > 0);
      const path = paths[place % paths.length]!;
      const ends = endsOf(path);
      return withValue(scenario, path, ends[end % ends.length]);
    }, bases[base]!),
  )
  .map((scenario) => ({ ...scenario, days: DAYS }));

describe('a plan with settings at the ends of their ranges, alone and in pairs', () => {
  it(
    'is refused with a sentence, or runs in finite numbers to its end or to where it says why it stops',
    () => {
      fc.assert(
        fc.property(anyEnds, (plan) => {
          const read = parseScenario(JSON.parse(JSON.stringify(plan)));
          if (!read.ok) {
            expect(read.problems.length).toBeGreaterThan(0);
            return;
          }
          const { trace, stopped } = run(read.scenario);
          // A trial that stops on the hour has no row of that hour.
          expect(trace.rows).toBe(stopped ? Math.ceil(stopped.timeH) : DAYS * 24 + 1);
          if (stopped) expect(stoppedSentence(stopped)).toMatch(/^The trial stops at hour /);
          for (const { id } of columns) {
            const values = readColumn(trace, id);
            expect(
              values.findIndex((value) => !Number.isFinite(value)),
              id,
            ).toBe(-1);
            if (SIGNED.has(id)) continue;
            expect(
              values.findIndex((value) => value < -1e-9),
              id,
            ).toBe(-1);
          }
        }),
        runsOf(1000),
      );
    },
    patience,
  );

  it('has a first day where no CO2 is in the room at all', () => {
    const { trace } = run(scenarioOf({ days: 1, room: { co2Ppm: 0 } }));
    expect(trace.rows).toBe(25);
  });
});
