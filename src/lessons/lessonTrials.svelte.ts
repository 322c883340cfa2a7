import { pathText, type FieldPath } from '../../shared/scenario/fields';
import { valueAt } from '../../shared/scenario/change';
import type { Scenario } from '../../shared/scenario/schema';
import type { Asking } from '../ask/asking';
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
    private readonly client: Asking,
    private readonly lesson: Lesson,
  ) {
    this.plans = plansOf(lesson, valueAt(lesson.scenario, lesson.control.path));
    for (const name of runNames) void this.run(name);
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
    void this.run('now');
  }

  settle(): void {}

  leave(): void {
    for (const name of runNames) this.client.cancel(this.key(name));
  }

  /** Keys of their own: the next lesson asks before this one has left. */
  private key(name: RunName): string {
    return `lesson ${this.lesson.id} ${name}`;
  }

  private async run(name: RunName): Promise<void> {
    const scenario = this.plans[name];
    const answer = await this.client.ask('trial', scenario, { key: this.key(name) });
    if (answer.kind === 'done') {
      this.done = { ...this.done, [name]: { scenario, outcome: answer.value } };
      this.trouble = '';
    }
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
  }
}
