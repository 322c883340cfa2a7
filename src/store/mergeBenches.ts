import { MOST_TRIALS } from './inks';
import { freeId, freeInk, freeName, type BenchPlans, type PlanOnBench } from './plans';
import { same } from './same';
import { threeWay } from './threeWay';

interface MergedBench {
  readonly bench: BenchPlans;
  /** The other window's bench, where something of it cannot stand beside ours. */
  readonly aside: BenchPlans | undefined;
}

const runsBy = ({ plans, since, before }: BenchPlans) => [plans[0], since, before];
const trialsOf = ({ plans }: BenchPlans) => plans.slice(1);
const find = (plans: readonly PlanOnBench[], id: string) => plans.find((plan) => plan.id === id);

/** A trial that is on both benches, or `undefined` where both have turned the same lever otherwise. */
function mergeTrial(base: PlanOnBench | undefined, mine: PlanOnBench, theirs: PlanOnBench) {
  if (same(mine, theirs)) return mine;
  const { value, clash } = threeWay(base, mine, { ...theirs, ink: mine.ink });
  return base && !clash ? (value as PlanOnBench) : undefined;
}

/** The trials of both: what one has changed, added or taken away alone is as that one has it. */
function mergeTrials(base: BenchPlans, mine: BenchPlans, theirs: BenchPlans) {
  const [old, others] = [trialsOf(base), trialsOf(theirs)];
  let clash = false;
  const trials = trialsOf(mine).flatMap((plan) => {
    const [before, other] = [find(old, plan.id), find(others, plan.id)];
    if (!other) return before && same(plan, before) ? [] : [plan];
    const merged = mergeTrial(before, plan, other);
    // Two that were added under one id are two.
    clash ||= !merged && before !== undefined;
    return [merged ?? plan];
  });
  for (const plan of others) {
    const [before, own] = [find(old, plan.id), find(trialsOf(mine), plan.id)];
    const isTheirs = own ? !before && !same(own, plan) : !before || !same(plan, before);
    if (!isTheirs) continue;
    const all = [mine.plans[0]!, ...trials];
    if (all.length === MOST_TRIALS) clash = true;
    else {
      const [id, ink] = [find(all, plan.id) ? freeId(all) : plan.id, freeInk(all)];
      const name = all.some((one) => one.name === plan.name) ? freeName(all) : plan.name;
      trials.push({
        ...plan,
        id,
        name,
        ink: all.some((one) => one.ink === plan.ink) ? ink : plan.ink,
      });
    }
  }
  return { trials, clash };
}

/** What the tank runs by is one part, and each trial is; of a lever that both have turned, ours stands. */
export function mergeBenches(base: BenchPlans, mine: BenchPlans, theirs: BenchPlans): MergedBench {
  const ours = !same(runsBy(mine), runsBy(base));
  const today = ours ? mine : theirs;
  const isTaken =
    ours && !same(runsBy(theirs), runsBy(base)) && !same(runsBy(mine), runsBy(theirs));
  const { trials, clash } = mergeTrials(base, mine, theirs);
  const plans = [today.plans[0]!, ...trials];
  const wanted = same(mine.selected, base.selected) ? theirs.selected : mine.selected;
  const selected = plans.find(({ id }) => id === wanted) ?? plans.at(-1)!;
  return {
    bench: {
      ...{ plans, selected: selected.id, since: today.since, before: today.before },
      ...(mine.untouched && theirs.untouched && { untouched: true }),
    },
    aside: isTaken || clash ? theirs : undefined,
  };
}
