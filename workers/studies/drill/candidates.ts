import type { HandAir } from '../../../shared/faults/handAir';
import type { Scenario } from '../../../shared/scenario/schema';
import { firstFaultH } from '../../../shared/verdict/drillOutcome';
import { inSlices } from '../../engine/inSlices';
import { settling, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import type { Doing } from './actPlans';
import { mightBe } from './mightBe';
import { courseOf, undisturbed, type Course } from './passing';

/** One of the tanks that this may be, and how a failure goes in it with this or that done. */
export interface Candidate {
  readonly asked: Scenario;
  readonly undisturbed: Course;
  readonly doing: Doing;
  readonly run: (scenario: Scenario) => Course;
}

/** The tanks that this may be, settled; `change` is made to each before it settles. */
export async function candidatesOf(
  asked: Scenario,
  handAir: HandAir,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
  change: (scenario: Scenario) => Scenario = (scenario) => scenario,
): Promise<Candidate[] | undefined> {
  const candidates: Candidate[] = [];
  let near: Settled | undefined;
  const fromH = firstFaultH(asked);
  for (const { scenario: tank, airShare } of mightBe(asked)) {
    const scenario = change(tank);
    const start = await inSlices(settling(scenario, options, near), pause);
    if (!start) return undefined;
    near ??= start;
    candidates.push({
      asked: scenario,
      undisturbed: courseOf(undisturbed(scenario), options, start, fromH),
      doing: { handAir, airShare },
      run: (plan) => courseOf(plan, options, start, fromH),
    });
    if (!(await pause())) return undefined;
  }
  return candidates;
}
