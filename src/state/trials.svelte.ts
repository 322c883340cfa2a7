import type { Scenario } from '../../shared/scenario/schema';
import { verdictOf, type Verdict } from '../../shared/verdict/verdict';
import type { TrialOutcome } from '../client/outcome';
import { TrialClient } from '../client/trialClient';
import type { DisplayUnits } from '../../shared/units/display';
import type { PlanOnBench } from './plans';
import { preferences } from './preferences.svelte';

/** What a plan's trial gave, with the scenario it belongs to. */
export interface Result {
  readonly scenario: Scenario;
  readonly outcome: TrialOutcome;
  readonly verdict: Verdict;
}

/** How a plan's trial stands; a newer question keeps the last good result on show. */
export interface Trial {
  readonly result: Result | undefined;
  readonly trouble: string | undefined;
  /** Share done of a trial that takes long. */
  readonly progress: number | undefined;
}

/** A result whose verdict speaks in the reader’s units, worked out again only when those change. */
function judged(scenario: Scenario, outcome: TrialOutcome): Result {
  let last: { readonly display: DisplayUnits; readonly verdict: Verdict } | undefined;
  return {
    scenario,
    outcome,
    get verdict() {
      const display = preferences.now;
      if (last?.display !== display) {
        last = { display, verdict: verdictOf(scenario, outcome, display) };
      }
      return last.verdict;
    },
  };
}

const untried: Trial = { result: undefined, trouble: undefined, progress: undefined };

/** The trials of the plans on the bench, run in workers and replaced whole as they come back. */
export class Trials {
  private readonly client: TrialClient;
  private byPlan: Readonly<Record<string, Trial>> = $state.raw({});

  constructor(client: TrialClient) {
    this.client = client;
  }

  of(id: string): Trial {
    return this.byPlan[id] ?? untried;
  }

  /** Runs what changed between two lists of plans, and forgets what is gone. */
  follow(before: readonly PlanOnBench[], now: readonly PlanOnBench[]): void {
    for (const { id } of before) {
      if (now.some((plan) => plan.id === id)) continue;
      this.client.drop(id);
      this.byPlan = Object.fromEntries(Object.entries(this.byPlan).filter(([key]) => key !== id));
    }
    for (const plan of now) {
      const old = before.find(({ id }) => id === plan.id);
      if (old?.scenario !== plan.scenario) this.run(plan);
    }
  }

  private run({ id, scenario }: PlanOnBench): void {
    const resultOf = (outcome: TrialOutcome) => judged(scenario, outcome);
    this.client.request(id, scenario, {
      done: (outcome) => this.put(id, { ...untried, result: resultOf(outcome) }),
      progress: ({ hours, of, partial }) =>
        this.put(id, {
          result: partial ? resultOf(partial) : this.of(id).result,
          trouble: undefined,
          progress: hours / of,
        }),
      failed: (trouble) =>
        this.put(id, { result: this.of(id).result, trouble, progress: undefined }),
    });
  }

  private put(id: string, trial: Trial): void {
    this.byPlan = { ...this.byPlan, [id]: trial };
  }
}
