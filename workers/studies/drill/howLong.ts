import type { HandAir } from '../../../shared/faults/handAir';
import { withoutChalk } from '../../../shared/scenario/chalk';
import type { Scenario } from '../../../shared/scenario/schema';
import type { FirstHourBought } from '../../../shared/verdict/bought';
import { firstFaultH } from '../../../shared/verdict/drillOutcome';
import type { Line } from '../../../shared/verdict/lines';
import type { SimulationOptions } from '../../engine/simulation';
import { leftAlone } from './actPlans';
import { isPowerCut } from './airEnds';
import { candidatesOf, type Candidate } from './candidates';
import { leadingOf } from './leading';
import type { Course } from './passing';

/** A failure that nobody does anything about, in the tanks that this may be. */
export interface LeftAlone {
  /** The drill without chalk and without what else is done. */
  readonly asked: Scenario;
  readonly candidates: readonly Candidate[];
  readonly alone: readonly Scenario[];
  readonly nothing: readonly Course[];
  readonly leading: Line | undefined;
  readonly fromH: number;
  readonly first: FirstHourBought['first'];
}

/** What is passed first if nothing is done, and when; `pause` says whether it is still wanted. */
export async function howLong(
  drill: Scenario,
  handAir: HandAir,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<LeftAlone | undefined> {
  const asked: Scenario = { ...withoutChalk(drill), responses: [] };
  const candidates = await candidatesOf(asked, handAir, options, pause);
  if (!candidates) return undefined;
  const fromH = firstFaultH(asked);
  const alone = candidates.map(({ asked: own }) => leftAlone(own));
  const nothing = candidates.map(({ run }, i) => run(alone[i]!));
  if (!(await pause())) return undefined;
  const first = leadingOf(candidates, nothing, asked.faults.some(isPowerCut), fromH);
  return { asked, candidates, alone, nothing, leading: first?.line, fromH, first };
}
