import { runNames, type Lesson, type LessonRuns } from '../../../src/lessons/lesson';
import { plansOf } from '../../../src/lessons/runsOf';
import { run } from '../../../workers/engine/run';

/** All runs of a lesson with its control standing at a value, by the engine here. */
export function runsAt(lesson: Lesson, value: unknown): LessonRuns {
  const plans = plansOf(lesson, value);
  const all = runNames.map((name) => [name, { scenario: plans[name], outcome: run(plans[name]) }]);
  return Object.fromEntries(all);
}
