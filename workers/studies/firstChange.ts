import type { Scenario } from '../../shared/scenario/schema';
import { verdictOf, type Verdict } from '../../shared/verdict/verdict';
import { run } from '../engine/run';
import { usualOptions, type SimulationOptions } from '../engine/simulation';

/** The tank as it runs now, and the one change that its verdict asks for first. */
export interface FirstChange {
  readonly verdict: Verdict;
  /** Another strength of the mix, or days between refills; empty when neither is asked for. */
  readonly change: Verdict['offer'];
}

/** What to turn first of what already runs, on a run of the tank as it stands. */
export function firstChange(now: Scenario, options: SimulationOptions = usualOptions): FirstChange {
  const verdict = verdictOf(now, run(now, options));
  return { verdict, change: verdict.offer };
}
