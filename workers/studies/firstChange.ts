import type { Scenario } from '../../shared/scenario/schema';
import type { Outcome } from '../../shared/verdict/outcome';
import { toppedOffLPerDay } from '../../shared/verdict/measures';
import { verdictOf, type Verdict } from '../../shared/verdict/verdict';
import { changedBy, wantedChange, type Change } from '../../shared/verdict/wantedChange';
import { run } from '../engine/run';
import { usualOptions, type SimulationOptions } from '../engine/simulation';
import { noWorse } from './noWorse';
import { dumpHolds, fullestReservoirL } from './plan/fullDump';

/** The tank as it runs now, and the one change that its verdict asks for first. */
export interface FirstChange {
  readonly verdict: Verdict;
  /** Another strength of the mix, or days between refills; empty when neither is asked for or would do. */
  readonly change: Change;
}

/** With no more in the reservoir than may go in at once; nothing where that does not last a day. */
function withoutHarm(now: Scenario, change: Change, { trace }: Outcome): Change {
  const { mixGPerL = 0 } = change;
  const changed = changedBy(now, change);
  if (mixGPerL <= now.topOff.gramsPerL || dumpHolds(changed)) return change;
  const reservoirL = fullestReservoirL(changed);
  const lastsDays = Math.floor(reservoirL / toppedOffLPerDay(trace));
  if (lastsDays < 1) return {};
  const { refillEveryDays: before } = now.topOff;
  const refillEveryDays = before === 0 ? lastsDays : Math.min(before, lastsDays);
  return { ...change, reservoirL, refillEveryDays };
}

/**
 * What to turn first of what already runs, on a run of the tank as it stands. It has been run from the
 * same start, and keeps every line at least as well as what it replaces; a stronger mix comes in no larger
 * a reservoir than may go in at once. Else nothing is offered.
 */
export function firstChange(
  now: Scenario,
  options: SimulationOptions = usualOptions,
  before: Outcome = run(now, options),
): FirstChange {
  const verdict = verdictOf(now, before);
  const change = withoutHarm(now, wantedChange(now, before.trace, verdict), before);
  const isAsked = Object.keys(change).length > 0;
  const helps = isAsked && noWorse(before, run(changedBy(now, change), options));
  return { verdict, change: helps ? change : {} };
}
