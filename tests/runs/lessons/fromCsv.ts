import type { MeasureId } from '../../../src/lessons/measures';
import type { LessonRun } from '../../../src/lessons/lesson';
import { traceCsv } from '../../../shared/trace/csv';

/** The columns of a run, read back from the file that a keeper would export. */
function columnsOf({ outcome }: LessonRun): (name: string) => number[] {
  const [header = '', ...lines] = traceCsv(outcome.trace).trim().split('\n');
  const names = header.split(',');
  const rows = lines.map((line) => line.split(',').map(Number));
  return (name) => {
    const at = names.indexOf(name);
    return rows.map((row) => (at < 0 ? 0 : row[at]!));
  };
}

const fall = (values: number[]) => values[0]! - values.at(-1)!;
const days = (values: number[]) => (values.length - 1) / 24;

/** Rows of the ledger that are use, by the names of their CSV columns. */
const USE = ['calcification', 'nitrification', 'denitrification', 'feeding'];

function use(run: LessonRun, from: number, to: number): number {
  const of = columnsOf(run);
  const taken = USE.reduce((sum, row) => {
    const booked = of(`from_${row}_dkh`);
    return sum + booked.at(from)! - booked.at(to)!;
  }, 0);
  return taken;
}

/** What an hourly file cannot show of a measure: an hour's use before a sudden change. */
export const betweenRows: Partial<Record<MeasureId, (run: LessonRun) => number>> = {
  largestDailyChange: (run) => use(run, 0, 24) / 12,
};

/** Every measure of a lesson once more, from the exported file and by other arithmetic. */
export const fromCsv: Partial<Record<MeasureId, (run: LessonRun) => number>> = {
  alkalinityStart: (run) => columnsOf(run)('alkalinity_dkh')[0]!,
  alkalinityEnd: (run) => columnsOf(run)('alkalinity_dkh').at(-1)!,
  alkalinityFall: (run) => fall(columnsOf(run)('alkalinity_dkh')),
  alkalinityFallPerDay: (run) => {
    const values = columnsOf(run)('alkalinity_dkh');
    return fall(values) / days(values);
  },
  alkalinityFallPercent: (run) => {
    const values = columnsOf(run)('alkalinity_dkh');
    return 100 * (1 - values.at(-1)! / values[0]!);
  },
  largestDailyChange: (run) => {
    const values = columnsOf(run)('alkalinity_dkh');
    const days = values.map((_, i) => values.slice(Math.max(0, i - 24), i + 1));
    return Math.max(...days.map((day) => Math.max(...day) - Math.min(...day)));
  },
  calciumStart: (run) => columnsOf(run)('calcium_mg_l')[0]!,
  calciumEnd: (run) => columnsOf(run)('calcium_mg_l').at(-1)!,
  calciumFallPercent: (run) => {
    const values = columnsOf(run)('calcium_mg_l');
    return 100 * (1 - values.at(-1)! / values[0]!);
  },
  calciumForEachDkh: (run) =>
    fall(columnsOf(run)('calcium_mg_l')) / fall(columnsOf(run)('alkalinity_dkh')),
  phHighest: (run) => Math.max(...columnsOf(run)('ph_nbs')),
  phLowest: (run) => Math.min(...columnsOf(run)('ph_nbs')),
  salinityHighest: (run) => Math.max(...columnsOf(run)('salinity_ppt')),
  useFirstDay: (run) => use(run, 0, 24),
  useLastDay: (run) => use(run, -25, -1),
  takenByCorals: (run) => fall(columnsOf(run)('from_calcification_dkh')),
  skeletonG: (run) => columnsOf(run)('skeleton_g').at(-1)!,
  testCount: (run) => Math.floor(days(columnsOf(run)('time_h'))) + 1,
};
