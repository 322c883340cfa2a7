import type { Scenario } from '../../shared/scenario/schema';
import { verdictOf, type Verdict } from '../../shared/verdict/verdict';
import { headlineOf } from '../say/verdict/headline';
import type { TrialOutcome } from '../ask/outcome';
import type { Asking } from '../ask/asking';
import type { DisplayUnits } from '../../shared/units/display';
import type { PlanOnBench } from '../store/plans';
import { preferences } from '../store/preferences.svelte';

/** A verdict with its answer in the reader's words; the reasons are told where they are shown. */
interface Headed extends Verdict {
  readonly headline: string;
}

/** What a plan's trial gave, with the scenario it belongs to. */
export interface Result {
  readonly scenario: Scenario;
  readonly outcome: TrialOutcome;
  readonly verdict: Headed;
}

/** How a plan's trial stands; a newer question keeps the last good result on show. */
export interface Trial {
  readonly result: Result | undefined;
  readonly trouble: string | undefined;
  /** Share done of a trial that takes long. */
  readonly progress: number | undefined;
  /** The scenario that all this is the last word on. */
  readonly answers?: Scenario;
}

/** A result whose verdict speaks in the reader’s units, worked out again only when those change. */
function headed(scenario: Scenario, outcome: TrialOutcome): Result {
  let judged: Verdict | undefined;
  let last: { readonly display: DisplayUnits; readonly verdict: Headed } | undefined;
  return {
    scenario,
    outcome,
    get verdict() {
      const display = preferences.now;
      if (last?.display !== display) {
        judged ??= verdictOf(scenario, outcome);
        const headline = headlineOf(judged, scenario, display);
        last = { display, verdict: { ...judged, headline } };
      }
      return last.verdict;
    },
  };
}

const untried: Trial = { result: undefined, trouble: undefined, progress: undefined };

/** The trials of the plans on the bench, run in workers and replaced whole as they come back. */
export class Trials {
  private byPlan: Readonly<Record<string, Trial>> = $state.raw({});
  private plans: readonly PlanOnBench[] = [];
  /** The scenario that was last sent to the workers under each plan's name. */
  private readonly asked: Record<string, Scenario | undefined> = {};

  constructor(private readonly client: Asking) {}

  of(id: string): Trial {
    return this.byPlan[id] ?? untried;
  }

  /** Runs what is new in a list of plans, once for those that are the same, and forgets what is gone. */
  follow(now: readonly PlanOnBench[]): void {
    for (const { id } of this.plans) {
      if (now.some((plan) => plan.id === id)) continue;
      this.client.cancel(id);
      delete this.asked[id];
      this.byPlan = Object.fromEntries(Object.entries(this.byPlan).filter(([key]) => key !== id));
    }
    this.plans = now;
    for (const { id, scenario } of now) if (this.asked[id] !== scenario) delete this.asked[id];
    for (const plan of now) if (!this.isAnswered(plan)) this.seek(plan);
  }

  private isAnswered({ id, scenario }: PlanOnBench): boolean {
    return this.of(id).answers === scenario;
  }

  /** From a plan that is the same, as it is there or as it comes in; else from the workers. */
  private seek({ id, scenario }: PlanOnBench): void {
    const same = this.plans.filter((plan) => plan.scenario === scenario);
    const twin = same.find((plan) => this.isAnswered(plan));
    if (!twin && !same.some((plan) => this.asked[plan.id] === scenario)) {
      void this.run(id, scenario);
      return;
    }
    if (this.asked[id] !== scenario) this.client.cancel(id);
    if (twin) this.put(id, this.of(twin.id));
  }

  private async run(id: string, scenario: Scenario): Promise<void> {
    const resultOf = (outcome: TrialOutcome) => headed(scenario, outcome);
    // An answer that its own plan has outrun is shown there until the next: a drag lives on it.
    const tell = (trial: (last: Result | undefined) => Trial) => {
      for (const plan of this.plans)
        if (plan.id === id || plan.scenario === scenario)
          this.put(plan.id, trial(this.of(plan.id).result));
    };
    this.asked[id] = scenario;
    const answer = await this.client.ask('trial', scenario, {
      key: id,
      tell: ({ hours, of, partial }) => {
        const some = partial && resultOf(partial);
        tell((last) => ({ result: some ?? last, trouble: undefined, progress: hours / of }));
      },
    });
    if (answer.kind === 'done') {
      const result = resultOf(answer.value);
      tell(() => ({ ...untried, result, answers: scenario }));
    }
    if (answer.kind === 'failed') {
      const trouble = answer.failure.message;
      tell((result) => ({ result, trouble, progress: undefined, answers: scenario }));
    }
  }

  private put(id: string, trial: Trial): void {
    this.byPlan = { ...this.byPlan, [id]: trial };
  }
}
