import { say } from '../../shared/words/bench';
import { pathText, type FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import type { Effect, GasSolution } from '../client/outcome';
import { TrialClient } from '../client/trialClient';
import { withValue } from '../../shared/scenario/change';
import { History } from './history';
import { MOST_TRIALS } from './inks';
import {
  openingPlans,
  replacing,
  withoutPlan,
  withPlan,
  type BenchPlans,
  type PlanOnBench,
} from './plans';
import { Trials, type Trial } from './trials.svelte';

/** The bench: plans, their trials, one time cursor, undo and redo. */
export class Bench {
  private state: BenchPlans = $state.raw({ plans: [], selected: '' });
  /** Counts changes, so that what asks the history is asked again. */
  private changes = $state(0);
  /** Counts undo and redo. */
  walks = $state(0);
  cursorH = $state(0);
  notice = $state('');
  /** Told of every change, to save it. */
  onChange: ((plans: BenchPlans) => void) | undefined;
  private history = new History<BenchPlans>();
  readonly client = new TrialClient();
  private readonly trials = new Trials(this.client);
  private readonly example: Scenario;

  constructor(example: Scenario) {
    this.example = example;
    this.show(openingPlans(example));
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
    this.show(plans);
    this.cursorH = 0;
  }

  select(id: string): void {
    this.history.settle();
    this.show({ ...this.state, selected: id });
  }
  /** Changes one setting of the selected plan; edits of the same one in a row undo as one. */
  set(path: FieldPath, value: unknown): void {
    const { id, scenario } = this.selected;
    const changed = this.edited(withValue(scenario, path, value));
    this.change(`${id} ${pathText(path)}`, replacing(this.state, id, { scenario: changed }));
  }
  /** Changes several settings as one step. */
  setSeveral(changes: readonly (readonly [FieldPath, unknown])[]): void {
    const { id, scenario } = this.selected;
    const changed = changes.reduce((s, [path, value]) => withValue(s, path, value), scenario);
    this.settle();
    this.change('several settings', replacing(this.state, id, { scenario: this.edited(changed) }));
    this.settle();
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
    if (this.state.plans.length > 1) this.step(withoutPlan(this.state, id));
  }
  rename(name: string): void {
    const { id } = this.selected;
    this.step(replacing(this.state, id, { name: name.trim() || say.plans.unnamed }));
  }
  /** The real tank runs by the selected plan from now on. */
  makeToday(): void {
    const scenario = { ...this.selected.scenario, question: '' };
    const next = replacing(this.state, this.today.id, { scenario });
    this.step(replacing(next, this.selected.id, { scenario }));
  }
  /** A scenario from a file or the shelf: as today's plan with one trial beside it. */
  open(scenario: Scenario): void {
    this.step(openingPlans(scenario));
    this.cursorH = 0;
  }
  /** A scenario as one more trial beside what is there. */
  addTrial(scenario: Scenario): void {
    if (this.canAdd) this.step(withPlan(this.state, scenario, scenario.title));
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
  startOver(): void {
    this.open(this.example);
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
    const answer = await this.client.solveGas(this.selected.scenario);
    if (answer.kind === 'failed') return answer.failure.message;
    if (answer.kind === 'superseded') return say.anotherQuestion;
    this.setSeveral([
      [['gas', 'kLaPerH'], answer.value.kLaPerH],
      [['photosynthesis', 'grossMmolPerLPerDay'], answer.value.grossMmolPerLPerDay],
    ]);
    return answer.value;
  }

  /** Which single change from the other plan to the selected one moved the outcome most. */
  async whatDidIt(from: Scenario): Promise<readonly Effect[] | string> {
    const answer = await this.client.whatDidIt(from, this.selected.scenario);
    if (answer.kind === 'done') return answer.value;
    return answer.kind === 'failed' ? answer.failure.message : say.anotherQuestion;
  }

  /** What an example asks of the tank as it runs today no longer fits once that has been changed. */
  private edited(scenario: Scenario): Scenario {
    return this.selected.id === this.today.id ? { ...scenario, question: '' } : scenario;
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
    this.changes++;
    this.trials.follow(next.plans);
    this.onChange?.(next);
  }
}
