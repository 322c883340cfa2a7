import fc from 'fast-check';
import { expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import { faultIds } from '../../shared/scenario/faults';
import type { Scenario } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import type { DrillAnswer, DrillOutcome } from '../../shared/verdict/drillOutcome';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { settle, type Settled } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { undisturbed } from '../../workers/studies/drill/passing';
import { protectionPlans } from '../../workers/studies/drill/protectionPlans';
import { protectionsAgainst } from '../../workers/studies/drill/protections';
import { anyFailure, anyFaultOf } from '../advice/anyFailure';
import { anyScenario } from './anyScenario';
import { isFull, patience, runsOf } from './size';

const TANKS = 200;
/** Every fault of every tank, with and without each protection: the proof alone tries them all. */
const runs = runsOf(isFull ? TANKS : 3);

const amounts = [
  ...(['calcium_mg_l', 'magnesium_mg_l', 'dic_umol_kg', 'volume_l', 'reservoir_l'] as const),
  ...(['nitrate_mg_l', 'phosphate_mg_l', 'ammonia_mg_l', 'oxygen_mg_l', 'skeleton_g'] as const),
];

/** What is said of a run alone: no chalk, no other end, no other hour. */
const answered = (outcome: DrillOutcome, calm: DrillOutcome): DrillAnswer => ({
  ...{ outcome, undisturbed: calm.lines, leftAlone: undefined, closed: undefined },
  ...{ eased: undefined, soonest: undefined, chalk: undefined, worst: undefined },
});

function holds(scenario: Scenario, calm: ReturnType<typeof runDrill>, start: Settled): void {
  const outcome = runDrill(scenario, usualOptions, start);
  const { trace, closures } = outcome;
  expect(new Float64Array(trace.buffer).every(Number.isFinite)).toBe(true);
  for (const id of amounts) {
    expect(Math.min(...readColumn(trace, id)), id).toBeGreaterThanOrEqual(-1e-9);
  }
  expect(closures.alkalinityUmolPerKg).toBeLessThan(1e-3);
  for (const off of Object.values(closures.elements)) expect(off).toBeLessThan(1e-12);
  const told = drillSentences(answered(outcome, calm), scenario).join(' ');
  expect(told).not.toMatch(/NaN|undefined|Infinity/);
  expect(told.length).toBeGreaterThan(20);
}

it(
  'every fault in any tank, with and without each of its protections, keeps the books and has an answer',
  () => {
    const tried = new Set<string>();
    fc.assert(
      fc.property(
        fc.oneof(anyFailure, anyScenario),
        fc.tuple(...faultIds.map((kind) => anyFaultOf([kind]))),
        (any, faults) => {
          const tank = { ...undisturbed(any), days: 3 };
          const start = settle(tank, usualOptions);
          const calm = runDrill(tank, usualOptions, start);
          for (const fault of faults) {
            const drill = { ...tank, faults: [fault] };
            holds(drill, calm, start);
            for (const id of protectionsAgainst(drill)) {
              holds(protectionPlans[id].change(drill, usualHandAir), calm, start);
              tried.add(`${fault.kind} ${id}`);
            }
          }
        },
      ),
      runs,
    );
    expect(tried.size).toBeGreaterThan(10);
  },
  patience * 4,
);
