import { valueAt } from '../../shared/scenario/change';
import type { Scenario } from '../../shared/scenario/schema';
import type { Asking } from '../ask/asking';
import { fieldOf, type FieldOf } from '../fields/fieldOf';
import { runNames, type Lesson, type LessonRun, type LessonRuns, type RunName } from './lesson';
import { plansOf } from './runsOf';

/** The runs of one lesson, and its one control. */
export class LessonTrials {
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

  /** The control where it stands, as a field of a form. */
  get control(): FieldOf {
    const { path } = this.lesson.control;
    return fieldOf(path, valueAt(this.plans.now, path), (_, value) => this.move(value));
  }

  /** All four runs, once every one has come back. */
  get runs(): LessonRuns | undefined {
    return runNames.every((name) => this.done[name]) ? (this.done as LessonRuns) : undefined;
  }

  private move(value: unknown): void {
    this.plans = plansOf(this.lesson, value);
    void this.run('now');
  }

  private async run(name: RunName): Promise<void> {
    const scenario = this.plans[name];
    const answer = await this.client.ask('trial', scenario, { key: name });
    if (answer.kind === 'done') {
      this.done = { ...this.done, [name]: { scenario, outcome: answer.value } };
      this.trouble = '';
    }
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
  }
}
