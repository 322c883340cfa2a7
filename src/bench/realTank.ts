import type { Scenario } from '../../shared/scenario/schema';
import { nowLocal } from '../store/nowLocal';
import { replacing } from '../store/plans';
import type { Plans } from './plans.svelte';
import { described, runningBy, sameSettings } from './runsBy';

/** What the real tank runs by: the four acts, each dated, that change today's plan. */
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
    this.step(runningBy(this.plans.now, plan, nowLocal(), { turned: true }));
  }
  /** It runs again by what it ran by before. */
  runBefore(index: number): void {
    const { before } = this.plans.now;
    // What takes back a turn is another turn.
    const how = before.at(-1)?.turned ? { turned: true as const } : {};
    this.step(runningBy(this.plans.now, before[index]!.scenario, nowLocal(), how));
  }
  /** The keeper has described the tank in a few answers: it runs by these. */
  describe(tank: Scenario): void {
    this.step(described(this.plans.now, tank, nowLocal()));
  }

  private step(next: Plans['now']): void {
    this.plans.edits.step(next);
  }
}
