import fc from 'fast-check';
import type { Scenario } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { withUse } from '../../workers/studies/plan/useEnds';
import { anyTurn, type AnyTurn } from './anyTurn';

/** At its target, and as much taken as comes in: a tank that anybody would leave alone. */
function steady(any: AnyTurn): AnyTurn {
  const at = (plan: Scenario): Scenario => ({
    ...plan,
    tank: { ...plan.tank, alkalinityDkh: any.targetDkh },
  });
  return balanced({ ...any, truth: at(any.truth), known: at(any.known) });
}

function balanced(any: AnyTurn): AnyTurn {
  const dkh = readColumn(run({ ...any.truth, days: 2 }).trace, 'alkalinity_dkh');
  const fell = (dkh[0]! - dkh.at(-1)!) / 2;
  const moved = (plan: Scenario) => withUse(plan, plan.corals.useDkhPerDay - fell);
  return { ...any, truth: moved(any.truth), known: moved(any.known) };
}

export const absence = fc.record({
  any: fc.oneof(anyTurn.map(steady), anyTurn),
  days: fc.noBias(fc.integer({ min: 1, max: 21 })),
  visitDays: fc.noBias(fc.integer({ min: 0, max: 7 })),
  bottleShare: fc.noBias(fc.integer({ min: 2, max: 20 })),
});

/** Bottles that hold from two days on to twenty. */
export const bottled = (plan: Scenario, days: number): Scenario => ({
  ...plan,
  dosers: plan.dosers.map((doser) => ({
    ...doser,
    stockL: Math.max(0.05, (doser.mlPerDay * days) / 1000),
  })),
});
