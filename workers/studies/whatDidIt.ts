import { differences, valueAt, withValue } from '../../shared/scenario/change';
import type { FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import { highest, lastOf } from '../../shared/verdict/measures';
import type { Outcome } from '../../shared/verdict/outcome';

/** What one change of setting moves when it alone is made. */
export interface Effect {
  readonly at: FieldPath;
  readonly endDkh: number;
  readonly peakPh: number;
}

/** The changes that lead from one plan to the other; a list of things counts as one change. */
export function changesBetween(from: Scenario, to: Scenario): FieldPath[] {
  const changes = new Map<string, FieldPath>();
  for (const { at, path } of differences(from, to)) {
    const isList = typeof at[1] === 'number';
    changes.set(isList ? String(at[0]) : path, isList ? at.slice(0, 1) : at);
  }
  return [...changes.values()];
}

type RunPlan = (scenario: Scenario) => Promise<Outcome | undefined>;

/**
 * Changes one setting at a time from one plan to the other and says what each moved, the largest
 * first. Ends with undefined when a run was superseded.
 */
export async function whatDidIt(
  from: Scenario,
  to: Scenario,
  run: RunPlan,
): Promise<Effect[] | undefined> {
  const base = await run(from);
  if (!base) return undefined;
  const effects: Effect[] = [];
  for (const at of changesBetween(from, to)) {
    const outcome = await run(withValue(from, at, valueAt(to, at)));
    if (!outcome) return undefined;
    effects.push({
      at,
      endDkh: lastOf(outcome.trace, 'alkalinity_dkh') - lastOf(base.trace, 'alkalinity_dkh'),
      peakPh: highest(outcome.trace, 'ph_nbs').value - highest(base.trace, 'ph_nbs').value,
    });
  }
  return effects.sort((a, b) => Math.abs(b.endDkh) - Math.abs(a.endDkh));
}
