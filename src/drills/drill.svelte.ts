import { valueAt, withValue } from '../../shared/scenario/change';
import { crossProblems } from '../../shared/scenario/crossChecks';
import type { FaultId } from '../../shared/scenario/faults';
import type { FieldPath } from '../../shared/scenario/fields';
import { newFault } from '../../shared/scenario/newFault';
import { sentence } from '../../shared/scenario/sentence';
import type { Scenario } from '../../shared/scenario/schema';
import type { DrillAnswer, DrillOutcome } from '../../shared/verdict/drillOutcome';
import type { TimeWindow } from '../charts/timeWindow';
import type { Asking } from '../ask/asking';
import { fieldOf, type FieldOf } from '../fields/fieldOf';
import type { Plans } from '../bench/plans.svelte';
import { recall, remember } from './drillMemory';
import type { PlanOnBench } from '../store/plans';

const kindsOf = (faults: Scenario['faults']): string => faults.map(({ kind }) => kind).join(' ');

/** A rehearsed failure of one of the bench's plans: what breaks, and what came of it. */
export class Drill {
  private kept: Pick<Scenario, 'faults' | 'days'> = $state.raw({
    faults: [newFault('topOffOn')],
    days: 4,
  });
  private planId = $state('');
  /** What the last drill that could be run was, and gave. */
  done:
    | {
        readonly scenario: Scenario;
        readonly outcome: DrillOutcome;
        readonly answer: DrillAnswer;
      }
    | undefined = $state.raw();
  trouble = $state('');
  cursorH = $state(0);
  /** Where its charts are looked at more nearly than the failure's own stretch. */
  near: TimeWindow | undefined = $state.raw();

  constructor(
    private readonly plans: Plans,
    private readonly client: Asking,
  ) {
    this.planId = plans.selected.id;
    this.kept = recall(plans.selected.scenario) ?? this.kept;
  }

  get plan(): PlanOnBench {
    return this.plans.all.find(({ id }) => id === this.planId) ?? this.plans.selected;
  }
  usePlan(id: string): void {
    this.planId = id;
  }

  get scenario(): Scenario {
    const { clockHour } = this.plan.scenario.start;
    // What was to break at an hour before this plan begins breaks on the morning after.
    const faults = this.kept.faults.map((fault) =>
      fault.day === 1 && fault.hour < clockHour ? { ...fault, day: 2 } : fault,
    );
    return { ...this.plan.scenario, ...this.kept, faults, responses: [] };
  }
  get problems(): readonly string[] {
    return crossProblems(this.scenario).map(sentence);
  }

  /** What a field of the form is given. */
  field(path: FieldPath): FieldOf {
    return fieldOf(path, valueAt(this.scenario, path), (at, value) =>
      this.keep(withValue(this.scenario, at, value)),
    );
  }

  add(kind: FaultId): void {
    this.keep({ ...this.kept, faults: [...this.kept.faults, newFault(kind)] });
  }
  remove(index: number): void {
    this.keep({ ...this.kept, faults: this.kept.faults.filter((_, i) => i !== index) });
  }
  open({ faults, days }: Scenario): void {
    this.done = undefined;
    this.keep({ faults, days });
  }

  /** Runs the drill as it is set now; a newer one wins. */
  async run(scenario: Scenario): Promise<void> {
    const answer = await this.client.ask('drill', scenario);
    // Another failure was chosen meanwhile, which may be none that can run.
    if (kindsOf(scenario.faults) !== kindsOf(this.kept.faults)) return;
    if (answer.kind === 'done') {
      this.done = { scenario, outcome: answer.value.outcome, answer: answer.value };
    }
    if (answer.kind === 'done') this.trouble = '';
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
  }

  private keep({ faults, days }: Pick<Scenario, 'faults' | 'days'>): void {
    // Beside a moving lever the last answer stands; beside another failure it would mislead.
    const isSame = kindsOf(faults) === kindsOf(this.kept.faults);
    if (!isSame) this.done = this.near = undefined;
    this.kept = { faults, days };
    remember(this.kept);
  }
}
