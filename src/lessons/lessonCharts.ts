import type { ColumnId } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import type { Series } from '../charts/chartScales';
import { firstCharts, foldedCharts, type ChartKind } from '../parts/chartKinds';
import { inks } from '../state/inks';
import type { Lesson, LessonRuns, RunName } from './lesson';

const skeleton: ChartKind = {
  column: 'skeleton_g',
  title: 'Skeleton laid down',
  unit: 'g',
  least: 1,
  format: (grams) => grams.toFixed(1),
};

export const lessonChart = (column: ColumnId): ChartKind =>
  [...firstCharts, ...foldedCharts, skeleton].find((kind) => kind.column === column)!;

const drawn: readonly { run: RunName; label: string; ink: number }[] = [
  { run: 'begin', label: 'at first', ink: 0 },
  { run: 'predicted', label: 'then', ink: 1 },
  { run: 'now', label: 'yours', ink: 2 },
];

/** The lines of one chart; the changed plan only where the prediction changes something. */
export const lessonSeries = (lesson: Lesson, runs: LessonRuns, column: ColumnId): Series[] =>
  drawn
    .filter(({ run }) => run !== 'predicted' || lesson.predict.changes.length > 0)
    .map(({ run, label, ink }) => ({
      key: run,
      label,
      ...inks[ink]!,
      values: readColumn(runs[run].outcome.trace, column),
    }));
