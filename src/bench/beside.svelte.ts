import { keepable } from '../../shared/scenario/keepable';
import type { Scenario } from '../../shared/scenario/schema';
import { MOST_TRIALS } from '../store/inks';
import { examplePlans, withoutPlan, withPlan } from '../store/plans';
import type { Plans } from './plans.svelte';
import { trialsCleared } from './runsBy';
import type { TimeAt } from './timeAt.svelte';

/** A scenario that finds no place on the bench, and what goes on once it has one. */
interface Waiting {
  readonly scenario: Scenario;
  readonly then: () => void;
}

/** What is opened stands beside the keeper's tank: one more trial, or, beside nothing, a new example. */
export class Beside {
  /** Opened while the bench was full. */
  waiting: Waiting | undefined = $state.raw();
  /** Whether readings of a real tank stand beside these plans. */
  isLogged: () => boolean = () => false;

  constructor(
    private readonly plans: Plans,
    private readonly cursor: TimeAt,
    private readonly example: Scenario,
  ) {}

  get canAdd(): boolean {
    return this.plans.canAdd;
  }

  /** A scenario from a file, the shelf or a lesson: a trial beside what is there, or a new example. */
  open(scenario: Scenario, then = () => {}): void {
    if (!this.isExample) {
      this.addTrial(scenario, then);
      return;
    }
    this.plans.edits.step(examplePlans(scenario));
    this.cursor.timeH = 0;
    then();
  }
  /** A scenario as one more trial beside what is there; it waits where there is no room. */
  addTrial(offered: Scenario, then = () => {}): void {
    const scenario = keepable(offered);
    if (!this.canAdd) {
      this.waiting = { scenario, then };
      return;
    }
    this.plans.edits.step(withPlan(this.plans.now, scenario, scenario.title));
    then();
  }
  /** Several plans as trials beside what is there, as one step; those that do not fit stay out. */
  addTrials(plans: readonly { readonly name: string; readonly scenario: Scenario }[]): void {
    const fitting = plans.slice(0, MOST_TRIALS - this.plans.all.length);
    if (fitting.length === 0) return;
    this.plans.edits.step(
      fitting.reduce(
        (state, { name, scenario }) => withPlan(state, scenario, name),
        this.plans.now,
      ),
    );
  }
  /** A trial goes, and what waits takes its place: one step. */
  makeRoom(id: string): void {
    const { waiting, plans } = this;
    if (!waiting || id === plans.today.id) return;
    this.waiting = undefined;
    const { scenario, then } = waiting;
    plans.edits.step(withPlan(withoutPlan(plans.now, id), scenario, scenario.title));
    then();
  }
  /** The trials go; what the tank runs by stays. */
  startOver(): void {
    const { now, edits } = this.plans;
    edits.step(this.isExample ? examplePlans(this.example) : trialsCleared(now));
    this.cursor.timeH = 0;
  }

  /** Whether there is no tank of the keeper's here: nothing logged, and no plan called what it runs by. */
  get isNobodys(): boolean {
    const { since, before } = this.plans.now;
    return since === '' && before.length === 0 && !this.isLogged();
  }

  /** An example that nobody has touched, and beside which nothing is logged. */
  private get isExample(): boolean {
    return this.plans.now.untouched === true && !this.isLogged();
  }
}
