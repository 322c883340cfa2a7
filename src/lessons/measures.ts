import { readColumn } from '../../shared/trace/trace';
import { highest, lastOf, lowest, rowsBetween, usePerDay } from '../../shared/verdict/measures';
import { lineOf } from '../../shared/verdict/lineResult';
import type { LessonRun } from './lesson';
import { lineThrough, TEST_SIGMA_DKH, testsOf } from './noisyTests';

/** A number read off a run, with its unit and the decimals worth showing. */
interface Measure {
  readonly unit: string;
  readonly digits: number;
  readonly of: (run: LessonRun) => number;
}

const lastHour = ({ outcome: { trace } }: LessonRun) => trace.rows - 1;
const first = ({ outcome: { trace } }: LessonRun, id: 'alkalinity_dkh' | 'calcium_mg_l') =>
  readColumn(trace, id)[0]!;
const fall = (run: LessonRun, id: 'alkalinity_dkh' | 'calcium_mg_l') =>
  first(run, id) - lastOf(run.outcome.trace, id);
const slope = (run: LessonRun) => lineThrough(testsOf(run.outcome.trace));

const measure = (unit: string, digits: number, of: Measure['of']): Measure => ({
  unit,
  digits,
  of,
});

/** What a lesson's text may state about a run. */
export const measures = {
  alkalinityStart: measure('dKH', 2, (run) => first(run, 'alkalinity_dkh')),
  alkalinityEnd: measure('dKH', 2, ({ outcome }) => lastOf(outcome.trace, 'alkalinity_dkh')),
  alkalinityFall: measure('dKH', 2, (run) => fall(run, 'alkalinity_dkh')),
  alkalinityFallPerDay: measure(
    'dKH/day',
    2,
    (run) => (fall(run, 'alkalinity_dkh') * 24) / lastHour(run),
  ),
  alkalinityFallPercent: measure(
    '%',
    0,
    (run) => (100 * fall(run, 'alkalinity_dkh')) / first(run, 'alkalinity_dkh'),
  ),
  largestDailyChange: measure(
    'dKH',
    2,
    ({ outcome }) => lineOf(outcome.lines, 'alkalinityChange').worst,
  ),
  calciumStart: measure('mg/L', 0, (run) => first(run, 'calcium_mg_l')),
  calciumEnd: measure('mg/L', 0, ({ outcome }) => lastOf(outcome.trace, 'calcium_mg_l')),
  calciumFallPercent: measure(
    '%',
    1,
    (run) => (100 * fall(run, 'calcium_mg_l')) / first(run, 'calcium_mg_l'),
  ),
  calciumForEachDkh: measure(
    'mg/L',
    1,
    (run) => fall(run, 'calcium_mg_l') / fall(run, 'alkalinity_dkh'),
  ),
  phHighest: measure('', 2, ({ outcome }) => highest(outcome.trace, 'ph_nbs').value),
  phLowest: measure('', 2, ({ outcome }) => lowest(outcome.trace, 'ph_nbs').value),
  salinityHighest: measure('ppt', 1, ({ outcome }) => highest(outcome.trace, 'salinity_ppt').value),
  useFirstDay: measure('dKH/day', 2, (run) =>
    usePerDay(run.outcome.trace, 0, Math.min(24, lastHour(run))),
  ),
  useLastDay: measure('dKH/day', 2, (run) =>
    usePerDay(run.outcome.trace, Math.max(0, lastHour(run) - 24), lastHour(run)),
  ),
  grownPercent: measure(
    '%',
    0,
    ({ scenario }) => 100 * Math.expm1((scenario.corals.growthPercentPerDay / 100) * scenario.days),
  ),
  takenByCorals: measure(
    'dKH',
    2,
    (run) => -rowsBetween(run.outcome.trace, ({ role }) => role === 'growth', 0, lastHour(run)),
  ),
  skeletonG: measure('g', 0, ({ outcome }) => lastOf(outcome.trace, 'skeleton_g')),
  testScatter: measure('dKH', 2, () => TEST_SIGMA_DKH),
  testCount: measure('', 0, (run) => testsOf(run.outcome.trace).length),
  testedFallPerDay: measure('dKH/day', 2, (run) => -slope(run).slopePerDay),
  testedDoubt: measure('dKH/day', 2, (run) => 2 * slope(run).doubtPerDay),
} as const satisfies Record<string, Measure>;

export type MeasureId = keyof typeof measures;
