import type { HandAir } from '../../../shared/faults/handAir';
import type { Scenario } from '../../../shared/scenario/schema';
import {
  protectionIds,
  type ProtectionBought,
  type ProtectionId,
  type Protections,
} from '../../../shared/verdict/bought';
import type { SimulationOptions } from '../../engine/simulation';
import { leftAlone } from './actPlans';
import { candidatesOf, type Candidate } from './candidates';
import { bought } from './gain';
import { howLong } from './howLong';
import { causedLines, type Course } from './passing';
import { protectionPlans } from './protectionPlans';

/** The protections that a tank can have against what breaks in it. */
export const protectionsAgainst = (scenario: Scenario): ProtectionId[] =>
  protectionIds.filter((id) => {
    const { against, fits } = protectionPlans[id];
    const isAgainst = scenario.faults.some(({ kind }) => against.includes(kind));
    return isAgainst && (fits?.(scenario) ?? true);
  });

/**
 * What would keep a failure from doing harm: the same failure with nobody noticing, in the plan as
 * it is and in one that has a protection from the start, each on its own, over the tanks that this
 * may be. The one that passes fewest limits, then the latest, is first. `pause` as ever.
 */
export async function protectionsOf(
  drill: Scenario,
  handAir: HandAir,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<Protections | undefined> {
  const left = await howLong(drill, handAir, options, pause);
  if (!left) return undefined;
  const { asked, candidates, nothing: before, leading, fromH, first } = left;
  const count = (course: Course, { undisturbed }: Candidate) =>
    causedLines(course, undisturbed).length;
  const protections: ProtectionBought[] = [];
  const worse: ProtectionId[] = [];
  for (const id of protectionsAgainst(asked)) {
    const { change } = protectionPlans[id];
    const changed = await candidatesOf(asked, handAir, options, pause, (own) =>
      change(own, handAir),
    );
    if (!changed) return undefined;
    const after = changed.map(({ asked: own, run }) =>
      run({ ...leftAlone(own), responses: own.responses }),
    );
    const found = bought(id, { candidates, before, after, fromH, actH: fromH, leading });
    const passes = [count(before[0]!, candidates[0]!), count(after[0]!, changed[0]!)] as const;
    if (found === 'worse') worse.push(id);
    else if (found) protections.push({ ...found, passes });
    if (!(await pause())) return undefined;
  }
  const lateness = ({ after }: ProtectionBought) => after.asSetH ?? Infinity;
  return {
    first,
    followedH: asked.days * 24 - fromH,
    protections: protections.sort(
      (a, b) =>
        a.passes[1] - b.passes[1] ||
        Number(lateness(b) > lateness(a)) - Number(lateness(a) > lateness(b)),
    ),
    worse,
  };
}
