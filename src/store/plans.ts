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

/** What the real tank ran by once, and from when. */
export interface RanBy {
  readonly since: string;
  readonly scenario: Scenario;
  /** It ended by a turn: a change on that day, and no putting right. */
  readonly turned?: true;
}

/** What undo, redo and autosave hold. */
export interface BenchPlans {
  /** The first is today's plan: what the real tank runs by. The others are trials. */
  readonly plans: readonly PlanOnBench[];
  readonly selected: string;
  /** When the keeper said that the tank runs by the first plan; empty: never yet. */
  readonly since: string;
  /** What it ran by before that, the latest last. */
  readonly before: readonly RanBy[];
  /** An example as it was opened: nothing of the keeper's is in it. */
  readonly untouched?: true;
}

const say = words.plans;

export const TODAY = say.today;

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The first free "Trial X". */
export function freeName(plans: readonly PlanOnBench[]): string {
  const letter = [...letters].find((l) => !plans.some(({ name }) => name === say.trial(l)));
  return say.trial(letter ?? String(plans.length));
}

export const freeInk = (plans: readonly PlanOnBench[]): number =>
  Math.max(
    0,
    inks.findIndex((_, i) => !plans.some(({ ink }) => ink === i)),
  );

export function freeId(plans: readonly PlanOnBench[]): string {
  let n = plans.length;
  while (plans.some(({ id }) => id === `plan-${n}`)) n++;
  return `plan-${n}`;
}

export const withPlan = (
  { plans, since, before }: BenchPlans,
  scenario: Scenario,
  name = freeName(plans),
): BenchPlans => {
  const id = freeId(plans);
  const plan = { id, name, ink: freeInk(plans), scenario };
  return { plans: [...plans, plan], selected: id, since, before };
};

export function withoutPlan(
  { plans, selected, since, before }: BenchPlans,
  id: string,
): BenchPlans {
  const rest = plans.filter((plan) => plan.id !== id);
  return { plans: rest, selected: selected === id ? rest.at(-1)!.id : selected, since, before };
}

export const replacing = (
  { plans, selected, since, before }: BenchPlans,
  id: string,
  change: Partial<PlanOnBench>,
): BenchPlans => ({
  plans: plans.map((plan) => (plan.id === id ? { ...plan, ...change } : plan)),
  ...{ selected, since, before },
});

const todayAlone = (scenario: Scenario): BenchPlans => ({
  plans: [{ id: 'today', name: TODAY, ink: 0, scenario }],
  ...{ selected: 'today', since: '', before: [] },
});

/** A tank as it runs today and one trial beside it, ready to be dragged. */
export const openingPlans = (today: Scenario): BenchPlans => withPlan(todayAlone(today), today);

/** An example on a bench that holds nothing of the keeper's yet. */
export const examplePlans = (example: Scenario): BenchPlans => ({
  ...openingPlans(example),
  untouched: true,
});
