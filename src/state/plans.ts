import { say as words } from '../../shared/words/bench';
import type { Scenario } from '../../shared/scenario/schema';
import { inks } from './inks';

/** One plan on the bench. */
export interface PlanOnBench {
  readonly id: string;
  readonly name: string;
  readonly ink: number;
  readonly scenario: Scenario;
}

/** What undo, redo and autosave hold. */
export interface BenchPlans {
  readonly plans: readonly PlanOnBench[];
  readonly selected: string;
}

const say = words.plans;

export const TODAY = say.today;

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The first free "Trial X". */
function freeName(plans: readonly PlanOnBench[]): string {
  const letter = [...letters].find((l) => !plans.some(({ name }) => name === say.trial(l)));
  return say.trial(letter ?? String(plans.length));
}

const freeInk = (plans: readonly PlanOnBench[]): number =>
  inks.findIndex((_, i) => !plans.some(({ ink }) => ink === i));

function freeId(plans: readonly PlanOnBench[]): string {
  let n = plans.length;
  while (plans.some(({ id }) => id === `plan-${n}`)) n++;
  return `plan-${n}`;
}

export const withPlan = (
  { plans }: BenchPlans,
  scenario: Scenario,
  name = freeName(plans),
): BenchPlans => {
  const id = freeId(plans);
  const plan = { id, name, ink: freeInk(plans), scenario };
  return { plans: [...plans, plan], selected: id };
};

export function withoutPlan({ plans, selected }: BenchPlans, id: string): BenchPlans {
  const rest = plans.filter((plan) => plan.id !== id);
  return { plans: rest, selected: selected === id ? rest.at(-1)!.id : selected };
}

export const replacing = (
  { plans, selected }: BenchPlans,
  id: string,
  change: Partial<PlanOnBench>,
): BenchPlans => ({
  plans: plans.map((plan) => (plan.id === id ? { ...plan, ...change } : plan)),
  selected,
});

/** A tank as it runs today and one trial beside it, ready to be dragged. */
export const openingPlans = (today: Scenario): BenchPlans =>
  withPlan(
    { plans: [{ id: 'today', name: TODAY, ink: 0, scenario: today }], selected: 'today' },
    today,
  );
