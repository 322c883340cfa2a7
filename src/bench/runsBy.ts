import { say as words } from '../../shared/words/bench';
import { differences } from '../../shared/scenario/change';
import { dosesAlike } from '../../shared/scenario/dosesAlike';
import type { Scenario } from '../../shared/scenario/schema';
import { replacing, withPlan, type BenchPlans } from '../store/plans';

/** So many earlier plans are kept; older ones are a matter for files. */
const MOST_BEFORE = 30;

/** A rehearsed failure is nothing that a tank runs by. */
const withoutFailures = (plan: Scenario): Scenario =>
  plan.faults.length + plan.responses.length > 0 ? { ...plan, faults: [], responses: [] } : plan;

export const sameSettings = (a: Scenario, b: Scenario): boolean =>
  a === b || (differences(a, b).length === 0 && differences(b, a).length === 0);

/** An example asks something; a tank of the keeper's own does not, and is not called after one. */
function ownWords({ title, place, question }: Scenario, since: string) {
  const borrowed = since === '' && question !== '';
  return {
    ...(borrowed ? { title: words.plans.myTank, place: '' } : { title, place }),
    ...{ question: '', answer: '' },
  };
}

/** Another dose is a turn, unless it is said; the first plan that is called the keeper's own is none. */
const isTurn = ({ since, plans: [today] }: BenchPlans, settings: Scenario): boolean =>
  since !== '' && !dosesAlike(today!.scenario, settings);

/**
 * The real tank runs by these settings from now on: the one act that changes today's plan. What it
 * ran by before is kept with its date, so that it can be taken back however much later; where it was
 * turned and not put right, the log until then is read by it.
 */
export function runningBy(
  bench: BenchPlans,
  plan: Scenario,
  now: string,
  turned: boolean = isTurn(bench, plan),
): BenchPlans {
  const { id, scenario } = bench.plans[0]!;
  const settings = withoutFailures(plan);
  const same = sameSettings(settings, scenario);
  if (same && bench.since !== '') return bench;
  const today = { ...settings, ...ownWords(scenario, bench.since) };
  // An example is nothing that ran; but a turn is of what the log was read by, whoever called it so.
  const ran = turned || !bench.untouched;
  const how = turned ? { turned } : {};
  const kept = same || !ran ? [] : [{ since: bench.since, scenario, ...how }];
  return {
    ...replacing(bench, id, { scenario: today }),
    since: now,
    before: [...bench.before, ...kept].slice(-MOST_BEFORE),
  };
}

/** What ended an earlier plan: the tank was turned on that day, or the plan was put right. */
export const endedBy = (bench: BenchPlans, index: number, turned: boolean): BenchPlans => ({
  ...bench,
  before: bench.before.map((ran, i) => {
    if (i !== index) return ran;
    const { since, scenario } = ran;
    return turned ? { since, scenario, turned } : { since, scenario };
  }),
});

/** A tank as the keeper has described it, with a trial to drag; it keeps its own words. */
export function described(bench: BenchPlans, tank: Scenario, now: string): BenchPlans {
  const running = runningBy(bench, tank, now, false);
  const today = { ...running.plans[0]!, scenario: tank };
  return withPlan({ ...running, plans: [today] }, tank);
}

/** Today's plan with a fresh copy of it to try on: every other trial goes. */
export const trialsCleared = (bench: BenchPlans): BenchPlans => {
  const [today] = bench.plans;
  return withPlan({ ...bench, plans: [today!] }, today!.scenario);
};
