import { pathText, type FieldPath } from '../../shared/scenario/fields';
import { valueAt } from '../../shared/scenario/change';
import type { Scenario } from '../../shared/scenario/schema';
import type { TrialClient } from '../client/trialClient';
import type { PlanOnBench } from '../state/plans';
import { runNames, type Lesson, type LessonRun, type LessonRuns, type RunName } from './lesson';
import { plansOf } from './runsOf';

/** The runs of one lesson, and its one control; offers a field what the bench offers it. */
export class LessonTrials {
  readonly walks = 0;
  private plans: Record<RunName, Scenario> = $state.raw()!;
  private done: Partial<Record<RunName, LessonRun>> = $state.raw({});
  trouble = $state('');

  constructor(
    private readonly client: TrialClient,
    private readonly lesson: Lesson,
  ) {
    this.plans = plansOf(lesson, valueAt(lesson.scenario, lesson.control.path));
    for (const name of runNames) this.run(name);
  }

  /** The plan with the control where it stands. */
  get selected(): PlanOnBench {
    return { id: 'lesson', name: this.lesson.title, ink: 2, scenario: this.plans.now };
  }

  /** All four runs, once every one has come back. */
  get runs(): LessonRuns | undefined {
    return runNames.every((name) => this.done[name]) ? (this.done as LessonRuns) : undefined;
  }

  set(path: FieldPath, value: unknown): void {
    if (pathText(path) !== pathText(this.lesson.control.path)) return;
    this.plans = plansOf(this.lesson, value);
    this.run('now');
  }

  settle(): void {}

  leave(): void {
    for (const name of runNames) this.client.drop(this.key(name));
  }

  /** Keys of their own: the next lesson asks before this one has left. */
  private key(name: RunName): string {
    return `lesson ${this.lesson.id} ${name}`;
  }

  private run(name: RunName): void {
    const scenario = this.plans[name];
    this.client.request(this.key(name), scenario, {
      done: (outcome) => {
        this.done = { ...this.done, [name]: { scenario, outcome } };
        this.trouble = '';
      },
      failed: (message) => (this.trouble = message),
      progress: () => {},
    });
  }
}
