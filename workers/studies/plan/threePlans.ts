import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import { recipeOf, type Kit, type Recipe } from '../../../shared/recipe/recipe';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { lastOf } from '../../../shared/verdict/measures';
import { verdictOf, type Verdict } from '../../../shared/verdict/verdict';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { PLAN_DAYS, runsWith, type RunPlan } from './holding';
import { limewaterFirst, twoPartAlone, waterChangesAlone, wellStocked, type Way } from './ways';

/** What is wanted of a plan, and how well the consumption is known. */
export interface PlanQuestion {
  /** The tank as it stands, with today's consumption. */
  readonly now: Scenario;
  readonly targetDkh: number;
  /** Two standard errors of the consumption, dKH/day. */
  readonly giveOrTakeDkhPerDay: number;
  readonly kit: Kit;
}

/** A plan replayed: what it says against the limits, and for how long it can be promised. */
export interface Candidate extends Way {
  readonly verdict: Verdict;
  readonly recipe: Recipe;
  /** Alkalinity hour by hour, dKH. */
  readonly dkh: Float64Array;
  /** Days inside the keeper's alkalinity band for every consumption that the log allows. */
  readonly promisedDays: number;
  /** A plan that cannot be promised at all is shown, and not offered. */
  readonly offered: boolean;
}

/** A shorter promise is none: a keeper who has just made a plan tests again after some days. */
const LEAST_PROMISE_DAYS = 3;

export const withUse = (scenario: Scenario, useDkhPerDay: number): Scenario => ({
  ...scenario,
  corals: { ...scenario.corals, measuredAs: 'use', useDkhPerDay: Math.max(0, useDkhPerDay) },
});

/** Whole days until alkalinity leaves the band, at most the length of the run. */
function daysInside(runPlan: RunPlan, scenario: Scenario): number {
  const { limits } = scenario;
  const { trace, stopped } = runPlan(scenario);
  const dkh = readColumn(trace, 'alkalinity_dkh');
  const out = dkh.findIndex((v) => v < limits.alkalinityLowDkh || v > limits.alkalinityHighDkh);
  const hours = out >= 0 ? out - 1 : (stopped?.timeH ?? dkh.length - 1);
  return Math.max(0, Math.floor(hours / 24));
}

function replay(runPlan: RunPlan, way: Way, question: PlanQuestion): Candidate {
  const { scenario } = way;
  const outcome = runPlan(scenario);
  const by = question.giveOrTakeDkhPerDay;
  const uses = [-by, 0, by].map((more) => scenario.corals.useDkhPerDay + more);
  const litres = lastOf(outcome.trace, 'topoff_l') / (Math.max(1, outcome.trace.rows - 1) / 24);
  const promisedDays = Math.min(...uses.map((use) => daysInside(runPlan, withUse(scenario, use))));
  return {
    ...way,
    promisedDays,
    offered: promisedDays >= LEAST_PROMISE_DAYS,
    verdict: verdictOf(scenario, outcome),
    recipe: recipeOf(scenario, litres, question.kit),
    dkh: readColumn(outcome.trace, 'alkalinity_dkh').slice(),
  };
}

/**
 * Three plans that hold the target from the day on which the water stands at it, each solved on
 * runs of the engine and replayed as rounded for scale and pump.
 */
export function threePlans(
  question: PlanQuestion,
  options: SimulationOptions = usualOptions,
): Candidate[] {
  const runPlan = runsWith(options);
  const { now, targetDkh } = question;
  const atTarget: Scenario = {
    ...now,
    days: PLAN_DAYS,
    additions: [],
    start: { ...now.start, carbon: 'settledCycle', omegaReference: 0 },
    tank: { ...now.tank, alkalinityDkh: targetDkh },
  };
  const stocked = wellStocked(runPlan, atTarget);
  return [limewaterFirst, twoPartAlone, waterChangesAlone].map((find) => {
    const way = find(runPlan, stocked, targetDkh);
    const title = say.ways.aiming(way.title, figure(targetDkh));
    return replay(runPlan, { ...way, scenario: { ...way.scenario, title } }, question);
  });
}
