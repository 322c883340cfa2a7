import { figure } from '../../shared/words/figure';
import { say } from '../../shared/words/lessonFrame';
import { differences } from '../../shared/scenario/change';
import type { ColumnId } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import type { DisplayUnits } from '../../shared/units/display';
import type { Series } from '../charts/chartScales';
import { chartKinds, inUnits, type ChartKind, type ShownKind } from '../charts/chartKinds';
import { inks } from '../store/inks';
import type { Lesson, LessonRuns, RunName } from './lesson';

const skeleton: ChartKind = {
  column: 'skeleton_g',
  title: say.skeleton,
  unit: 'g',
  least: 1,
  format: (grams) => figure(grams, 1),
};

/** A chart of the bench, or the skeleton's, in the reader's units. */
export const lessonChart = (column: ColumnId, display: DisplayUnits): ShownKind =>
  inUnits(
    [...chartKinds, skeleton].find((kind) => kind.column === column)!,
    display,
  );

const drawn: readonly { run: RunName; label: string; ink: number }[] = [
  { run: 'begin', label: say.runs.begin, ink: 0 },
  { run: 'predicted', label: say.runs.predicted, ink: 1 },
  { run: 'now', label: say.runs.now, ink: 2 },
];

/** How far its charts go. */
export const shownHours = ({ begin, now }: LessonRuns): number =>
  Math.max(begin.outcome.trace.rows, now.outcome.trace.rows) - 1;

/** The lines of one chart; the changed plan only where the prediction changes something. */
export const lessonSeries = (lesson: Lesson, runs: LessonRuns, kind: ShownKind): Series[] =>
  drawn
    .filter(
      ({ run }) =>
        (run !== 'predicted' || lesson.predict.changes.length > 0) &&
        // The same twice is drawn once.
        (run !== 'now' || differences(runs.begin.scenario, runs.now.scenario).length > 0),
    )
    .map(({ run, label, ink }) => ({
      key: run,
      label,
      ...inks[ink]!,
      values: kind.shown(readColumn(runs[run].outcome.trace, kind.column)),
    }));
