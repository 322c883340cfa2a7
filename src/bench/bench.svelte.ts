import { say } from '../../shared/words/bench';
import { pathText, type FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import type { Effect, GasSolution } from '../ask/outcome';
import { Asking } from '../ask/asking';
import { differences, valueAt, withValue } from '../../shared/scenario/change';
import { fieldOf, type FieldOf } from '../fields/fieldOf';
import { History } from '../store/history';
import { MOST_TRIALS } from '../store/inks';
import { mergeBenches } from '../store/mergeTanks';
import { nowLocal } from '../store/nowLocal';
import {
  examplePlans,
  replacing,
  withoutPlan,
  withPlan,
  type BenchPlans,
  type PlanOnBench,
} from '../store/plans';
import { described, runningBy, sameSettings, trialsCleared } from './runsBy';
import { same } from '../store/same';
import { Trials, type Trial } from './trials.svelte';

/** A scenario that finds no place on the bench, and what goes on once it has one. */
interface Waiting {
  readonly scenario: Scenario;
  readonly then: () => void;
}

/**
 * The bench: plans, their trials, one time cursor, undo and redo. Whatever is tried is a trial;
 * today's plan changes by `makeToday`, `runBy`, `runBefore` and `describe` alone.
 */
export class Bench {
  private state: BenchPlans = $state.raw({ plans: [], selected: '', since: '', before: [] });
  /** Counts changes, so that what asks the history is asked again. */
  private changes = $state(0);
  /** Counts undo and redo. */
  walks = $state(0);
  cursorH = $state(0);
  notice = $state('');
  /** Told of every change, to save it. */
  onChange: ((plans: BenchPlans) => void) | undefined;
  /** Whether readings of a real tank stand beside these plans. */
  isLogged: () => boolean = () => false;
  /** Whether a change of today's plan found no room to be tried in. */
  noRoom = $state(false);
  /** Opened while the bench was full. */
  waiting: Waiting | undefined = $state.raw();
  private history = new History<BenchPlans>();
  readonly client = new Asking();
  private readonly trials = new Trials(this.client);
  private readonly example: Scenario;

  constructor(example: Scenario) {
    this.example = example;
    this.show(examplePlans(example));
  }

  get now(): BenchPlans {
    return this.state;
  }
  get plans(): readonly PlanOnBench[] {
    return this.state.plans;
  }
  get selected(): PlanOnBench {
    return this.state.plans.find(({ id }) => id === this.state.selected) ?? this.today;
  }
  get today(): PlanOnBench {
    return this.state.plans[0]!;
  }
  get canAdd(): boolean {
    return this.state.plans.length < MOST_TRIALS;
  }
  get canUndo(): boolean {
    return this.changes >= 0 && this.history.canUndo;
  }
  get canRedo(): boolean {
    return this.changes >= 0 && this.history.canRedo;
  }
  trialOf(id: string): Trial {
    return this.trials.of(id);
  }

  /** Another tank's plans; what was done to the last one is not undone in this. */
  openPlans(plans: BenchPlans): void {
    this.history = new History();
    this.waiting = undefined;
    this.show(plans);
    this.cursorH = 0;
  }
  /** Takes over what another window has made of this bench; what was done here can still be undone. */
  follow(plans: BenchPlans): void {
    const shown = this.state;
    if (same({ ...shown, selected: '' }, { ...plans, selected: '' })) return;
    this.history.rebase((state) => mergeBenches(shown, state, plans).bench);
    const selected = plans.plans.some(({ id }) => id === shown.selected)
      ? shown.selected
      : plans.selected;
    // A plan that is as it was need not run again.
    const kept = plans.plans.map(
      (plan) => shown.plans.find((one) => one.id === plan.id && same(one, plan)) ?? plan,
    );
    this.show({ ...plans, plans: kept, selected });
  }

  select(id: string): void {
    this.history.settle();
    this.show({ ...this.state, selected: id });
  }
  /** Changes one setting of a trial; edits of the same one in a row undo as one. */
  set(path: FieldPath, value: unknown): void {
    const state = this.onATrial();
    if (!state) return;
    const { id, scenario } = state.plans.find((plan) => plan.id === state.selected)!;
    const changed = withValue(scenario, path, value);
    this.change(`${id} ${pathText(path)}`, replacing(state, id, { scenario: changed }));
  }
  /** Changes several settings as one step. */
  setSeveral(changes: readonly (readonly [FieldPath, unknown])[]): void {
    const state = this.onATrial();
    if (!state) return;
    const { id, scenario } = state.plans.find((plan) => plan.id === state.selected)!;
    const changed = changes.reduce((s, [path, value]) => withValue(s, path, value), scenario);
    this.step(replacing(state, id, { scenario: changed }));
  }
  /** What a field of a form is given. */
  field(path: FieldPath): FieldOf {
    const value = valueAt(this.selected.scenario, path);
    const set = (at: FieldPath, next: unknown) => this.set(at, next);
    return { ...fieldOf(path, value, set, () => this.settle()), walks: this.walks };
  }
  /** The end of a drag: the next edit is a step of its own. */
  settle(): void {
    this.history.settle();
  }
  /** Keeps the selected plan as it is and goes on with a copy. */
  keep(): void {
    if (this.canAdd) this.step(withPlan(this.state, this.selected.scenario));
  }
  remove(id: string): void {
    if (id !== this.today.id) this.step(withoutPlan(this.state, id));
  }
  rename(name: string): void {
    const { id } = this.selected;
    this.step(replacing(this.state, id, { name: name.trim() || say.plans.unnamed }));
  }
  /** The real tank runs by the selected plan from now on. */
  makeToday(): void {
    const { id, scenario } = this.selected;
    const next = runningBy(this.state, scenario, nowLocal());
    const today = next.plans[0]!.scenario;
    if (next === this.state) return;
    // The same twice is run once.
    this.step(sameSettings(scenario, today) ? replacing(next, id, { scenario: today }) : next);
  }
  /** The real tank runs by a plan that stands on no bench: what was turned. */
  runBy(plan: Scenario): void {
    this.step(runningBy(this.state, plan, nowLocal(), { turned: true }));
  }
  /** The real tank runs again by what it ran by before. */
  runBefore(index: number): void {
    const { before } = this.state;
    // What takes back a turn is another turn.
    const how = before.at(-1)?.turned ? { turned: true as const } : {};
    this.step(runningBy(this.state, before[index]!.scenario, nowLocal(), how));
  }
  /** The keeper has described the tank in a few answers: it runs by these. */
  describe(tank: Scenario): void {
    this.step(described(this.state, tank, nowLocal()));
  }
  /** A scenario from a file, the shelf or a lesson: a trial beside what is there, or a new example. */
  open(scenario: Scenario, then = () => {}): void {
    if (!this.state.untouched || this.isLogged()) {
      this.addTrial(scenario, then);
      return;
    }
    this.step(examplePlans(scenario));
    this.cursorH = 0;
    then();
  }
  /** A scenario as one more trial beside what is there; it waits where there is no room. */
  addTrial(scenario: Scenario, then = () => {}): void {
    if (!this.canAdd) {
      this.waiting = { scenario, then };
      return;
    }
    this.step(withPlan(this.state, scenario, scenario.title));
    then();
  }
  /** A trial goes, and what waits takes its place: one step. */
  makeRoom(id: string): void {
    const { waiting } = this;
    if (!waiting || id === this.today.id) return;
    this.waiting = undefined;
    const { scenario, then } = waiting;
    this.step(withPlan(withoutPlan(this.state, id), scenario, scenario.title));
    then();
  }
  /** Several plans as trials beside what is there, as one step; those that do not fit stay out. */
  addTrials(plans: readonly { readonly name: string; readonly scenario: Scenario }[]): void {
    const fitting = plans.slice(0, MOST_TRIALS - this.state.plans.length);
    const next = fitting.reduce(
      (state, { name, scenario }) => withPlan(state, scenario, name),
      this.state,
    );
    if (fitting.length > 0) this.step(next);
  }
  /** The trials go; what the tank runs by stays. */
  startOver(): void {
    this.step(
      this.state.untouched && !this.isLogged()
        ? examplePlans(this.example)
        : trialsCleared(this.state),
    );
    this.cursorH = 0;
  }
  undo(): void {
    const state = this.history.undo(this.state);
    this.walks++;
    if (state) this.show(state);
  }
  redo(): void {
    const state = this.history.redo(this.state);
    this.walks++;
    if (state) this.show(state);
  }

  /** Works out kLa and photosynthesis from the readings in the selected plan, and takes them. */
  async solveGas(): Promise<GasSolution | string> {
    const answer = await this.client.ask('solveGas', this.selected.scenario);
    if (answer.kind === 'failed') return answer.failure.message;
    if (answer.kind !== 'done') return say.anotherQuestion;
    this.setSeveral([
      [['gas', 'kLaPerH'], answer.value.kLaPerH],
      [['photosynthesis', 'grossMmolPerLPerDay'], answer.value.grossMmolPerLPerDay],
    ]);
    return answer.value;
  }

  /** Which single change from the other plan to the selected one moved the outcome most. */
  async whatDidIt(from: Scenario): Promise<readonly Effect[] | string> {
    const answer = await this.client.ask('whatDidIt', { from, to: this.selected.scenario });
    if (answer.kind === 'done') return answer.value;
    return answer.kind === 'failed' ? answer.failure.message : say.anotherQuestion;
  }

  /** The bench with a trial selected: today's plan is tried on a copy of it, if there is room for one. */
  private onATrial(): BenchPlans | undefined {
    const { today, selected, state } = this;
    if (selected.id !== today.id) return state;
    const isCopy = ({ id, scenario }: PlanOnBench) =>
      id !== today.id && differences(today.scenario, scenario).length === 0;
    const copy = state.plans.find(isCopy);
    if (copy) return { ...state, selected: copy.id };
    if (this.canAdd) return withPlan(state, today.scenario);
    this.noRoom = true;
    return undefined;
  }

  private step(next: BenchPlans): void {
    this.settle();
    this.change('a step', next);
    this.settle();
  }

  private change(name: string, next: BenchPlans): void {
    this.history.remember(this.state, name);
    this.show(next);
  }

  private show(next: BenchPlans): void {
    this.state = next;
    this.noRoom = false;
    this.changes++;
    this.trials.follow(next.plans);
    this.onChange?.(next);
  }
}
