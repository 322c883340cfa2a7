import type { Scenario } from '../../shared/scenario/schema';
import { nowLocal } from '../store/nowLocal';
import { replacing } from '../store/plans';
import type { Plans } from './plans.svelte';
import { described, endedBy, runningBy, sameSettings } from './runsBy';

/** What the real tank runs by: the four acts, each dated, that change today's plan, and what each was. */
export class RealTank {
  constructor(private readonly plans: Plans) {}

  /** It runs by the selected plan from now on. */
  makeToday(): void {
    const { now, selected } = this.plans;
    const next = runningBy(now, selected.scenario, nowLocal());
    if (next === now) return;
    const today = next.plans[0]!.scenario;
    const isSame = sameSettings(selected.scenario, today);
    // The same twice is run once.
    this.step(isSame ? replacing(next, selected.id, { scenario: today }) : next);
  }
  /** It runs by a plan that stands on no bench: what was turned. */
  runBy(plan: Scenario): void {
    this.step(runningBy(this.plans.now, plan, nowLocal(), true));
  }
  /** It runs again by what it ran by before. */
  runBefore(index: number): void {
    this.step(runningBy(this.plans.now, this.plans.now.before[index]!.scenario, nowLocal()));
  }
  /** It ran by an earlier plan until the next, or never: then the plan was only put right. */
  ranSo(index: number, turned: boolean): void {
    this.step(endedBy(this.plans.now, index, turned));
  }
  /** The keeper has described the tank in a few answers: it runs by these. */
  describe(tank: Scenario): void {
    this.step(described(this.plans.now, tank, nowLocal()));
  }

  private step(next: Plans['now']): void {
    this.plans.edits.step(next);
  }
}
