import { differences, valueAt, withValue } from '../../shared/scenario/change';
import { pathText, type FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import { say } from '../../shared/words/bench';
import { fieldOf, type FieldOf } from '../fields/fieldOf';
import { Edits } from '../store/edits.svelte';
import { MOST_TRIALS } from '../store/inks';
import {
  replacing,
  withoutPlan,
  withPlan,
  type BenchPlans,
  type PlanOnBench,
} from '../store/plans';
import { same } from '../store/same';

/** The plans on the bench: today's and the trials, one of them selected and edited. */
export class Plans {
  /** Whether a change of today's plan found no room to be tried in. */
  noRoom = $state(false);
  readonly edits: Edits<BenchPlans>;
  /** Told of every change, to save it. */
  onChange: ((plans: BenchPlans) => void) | undefined;

  constructor(first: BenchPlans, follow: (plans: readonly PlanOnBench[]) => void) {
    this.edits = new Edits(first, {
      shown: ({ plans }) => {
        this.noRoom = false;
        follow(plans);
      },
      changed: (plans) => this.onChange?.(plans),
    });
  }

  get now(): BenchPlans {
    return this.edits.now;
  }
  get all(): readonly PlanOnBench[] {
    return this.now.plans;
  }
  get selected(): PlanOnBench {
    return this.all.find(({ id }) => id === this.now.selected) ?? this.today;
  }
  get today(): PlanOnBench {
    return this.all[0]!;
  }
  get canAdd(): boolean {
    return this.all.length < MOST_TRIALS;
  }

  /** Takes over what another window has made of this bench, and of each earlier step of it. */
  follow(plans: BenchPlans, onto: (step: BenchPlans) => BenchPlans): void {
    const shown = this.now;
    if (same({ ...shown, selected: '' }, { ...plans, selected: '' })) return;
    const selected = plans.plans.some(({ id }) => id === shown.selected)
      ? shown.selected
      : plans.selected;
    // A plan that is as it was need not run again.
    const kept = plans.plans.map(
      (plan) => shown.plans.find((one) => one.id === plan.id && same(one, plan)) ?? plan,
    );
    this.edits.follow({ ...plans, plans: kept, selected }, onto);
  }

  select(id: string): void {
    this.edits.settle();
    this.edits.put({ ...this.now, selected: id });
  }
  /** Changes one setting of a trial; edits of the same one in a row undo as one. */
  set(path: FieldPath, value: unknown): void {
    const tried = this.changed([[path, value]]);
    if (tried) this.edits.edit(`${tried.selected} ${pathText(path)}`, tried);
  }
  /** Changes several settings as one step. */
  setSeveral(changes: readonly (readonly [FieldPath, unknown])[]): void {
    const tried = this.changed(changes);
    if (tried) this.edits.step(tried);
  }
  /** Turns here what was turned on another plan; a list is taken over whole. */
  turnAlike(before: Scenario, after: Scenario): void {
    const paths = differences(before, after).map(({ at }) =>
      Array.isArray(valueAt(after, at.slice(0, 1))) ? at.slice(0, 1) : at,
    );
    if (paths.length > 0) this.setSeveral(paths.map((path) => [path, valueAt(after, path)]));
  }
  /** What a field of a form is given. */
  field(path: FieldPath): FieldOf {
    const value = valueAt(this.selected.scenario, path);
    const set = (at: FieldPath, next: unknown) => this.set(at, next);
    return { ...fieldOf(path, value, set, () => this.edits.settle()), walks: this.edits.walks };
  }
  /** Keeps the selected plan as it is and goes on with a copy. */
  keep(): void {
    if (this.canAdd) this.edits.step(withPlan(this.now, this.selected.scenario));
  }
  remove(id: string): void {
    if (id !== this.today.id) this.edits.step(withoutPlan(this.now, id));
  }
  rename(name: string): void {
    const { id } = this.selected;
    this.edits.step(replacing(this.now, id, { name: name.trim() || say.plans.unnamed }));
  }

  private changed(changes: readonly (readonly [FieldPath, unknown])[]): BenchPlans | undefined {
    const state = this.onATrial();
    if (!state) return undefined;
    const { id, scenario } = state.plans.find((plan) => plan.id === state.selected)!;
    const next = changes.reduce((s, [path, value]) => withValue(s, path, value), scenario);
    return replacing(state, id, { scenario: next });
  }

  /** The bench with a trial selected: today's plan is tried on a copy of it, if there is room for one. */
  private onATrial(): BenchPlans | undefined {
    const { today, selected, now } = this;
    if (selected.id !== today.id) return now;
    const isCopy = ({ id, scenario }: PlanOnBench) =>
      id !== today.id && differences(today.scenario, scenario).length === 0;
    const copy = this.all.find(isCopy);
    if (copy) return { ...now, selected: copy.id };
    if (this.canAdd) return withPlan(now, today.scenario);
    this.noRoom = true;
    return undefined;
  }
}
