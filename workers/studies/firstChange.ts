import type { Scenario } from '../../shared/scenario/schema';
import type { Outcome } from '../../shared/verdict/outcome';
import { verdictOf, type Verdict } from '../../shared/verdict/verdict';
import { changedBy, wantedChange, type Change } from '../../shared/verdict/wantedChange';
import { run } from '../engine/run';
import { usualOptions, type SimulationOptions } from '../engine/simulation';
import { noWorse } from './noWorse';

/** The tank as it runs now, and the one change that its verdict asks for first. */
export interface FirstChange {
  readonly verdict: Verdict;
  /** Another strength of the mix, or days between refills; empty when neither is asked for or would do. */
  readonly change: Change;
}

/**
 * What to turn first of what already runs, on a run of the tank as it stands. It has been run from the
 * same start, and keeps every line at least as well as what it replaces; else nothing is offered.
 */
export function firstChange(
  now: Scenario,
  options: SimulationOptions = usualOptions,
  before: Outcome = run(now, options),
): FirstChange {
  const verdict = verdictOf(now, before);
  const change = wantedChange(now, before.trace, verdict);
  const isAsked = Object.keys(change).length > 0;
  const helps = isAsked && noWorse(before, run(changedBy(now, change), options));
  return { verdict, change: helps ? change : {} };
}
