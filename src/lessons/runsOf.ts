import { withValue } from '../../shared/scenario/change';
import type { Scenario } from '../../shared/scenario/schema';
import type { Changes, Lesson, RunName } from './lesson';

export const changed = (scenario: Scenario, changes: Changes): Scenario =>
  changes.reduce((plan, [path, value]) => withValue(plan, path, value), scenario);

/** The plan behind each of a lesson's runs, the control standing at `value`. */
export const plansOf = (lesson: Lesson, value: unknown): Record<RunName, Scenario> => ({
  begin: lesson.scenario,
  predicted: changed(lesson.scenario, lesson.predict.changes),
  now: changed(lesson.scenario, [[lesson.control.path, value]]),
  asked: changed(lesson.scenario, lesson.ask.changes),
});
