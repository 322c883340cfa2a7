import type { Scenario } from '../../shared/scenario/schema';
import { Asking } from '../ask/asking';
import { examplePlans, type BenchPlans } from '../store/plans';
import { Beside } from './beside.svelte';
import { Plans } from './plans.svelte';
import { RealTank } from './realTank';
import { TimeAt } from './timeAt.svelte';
import { Trials } from './trials.svelte';

/**
 * The bench: plans and their trials, what the real tank runs by, what stands beside it, and one
 * time cursor. A panel is given those of them that it uses.
 */
export class Bench {
  readonly trials = new Trials(new Asking());
  readonly cursor = new TimeAt();
  readonly plans: Plans;
  readonly realTank: RealTank;
  readonly beside: Beside;

  constructor(example: Scenario) {
    this.plans = new Plans(examplePlans(example), (plans) => this.trials.follow(plans));
    this.realTank = new RealTank(this.plans);
    this.beside = new Beside(this.plans, this.cursor, example);
  }

  /** Another tank's plans. */
  open(plans: BenchPlans): void {
    this.beside.waiting = undefined;
    this.plans.edits.open(plans);
    this.cursor.timeH = 0;
  }
}
