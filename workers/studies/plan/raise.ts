import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import type { Run } from '../../engine/run';
import type { Correction, CorrectionQuestion } from './correct';
import { largestMoveDkh, peakPh, SPARE } from './holding';
import { afterwards, highestDkh, pouredBy, withMornings } from './pouring';
import { doseWhere } from './root';
import type { RunPlan } from './runPlan';
import { endsOf } from './useEnds';

/** Longer than a month is no correction but another plan. */
const MOST_DAYS = 30;
const LONGER = 1.4;
const CLOSE_DKH = 0.02;

type Raise = Extract<Correction, { kind: 'raise' | 'rises' | 'tooFast' | 'tooHighPh' | 'unsure' }>;
interface Sought {
  readonly moveDkh?: (scenario: Scenario) => number;
  readonly mostDays?: number;
}

/**
 * The fewest mornings whose doses reach the target and never move it faster than the limit;
 * `moveDkh` is the largest move of a day that a scenario may come to, where that is known otherwise.
 */
export function raise(
  runPlan: RunPlan,
  question: CorrectionQuestion,
  { moveDkh, mostDays = MOST_DAYS }: Sought = {},
): Raise {
  const { upkeep, targetDkh, additive, giveOrTakeDkhPerDay } = question;
  const { tank, corals, limits, start } = upkeep;
  const missing = targetDkh - tank.alkalinityDkh;
  const limit = limits.alkalinityChangeDkhPerDay;
  const scenarioWith = (days: number, grams: number) => withMornings(upkeep, additive, days, grams);
  const runsOf = (scenario: Scenario) => endsOf(scenario, giveOrTakeDkhPerDay).map(runPlan);
  const unpoured = runsOf({ ...upkeep, days: 3 });
  if (risesTooFast()) return { kind: 'tooFast', mostDkhPerDay: limit };
  // Where pH is beyond the limit as it is, a dose may not lift it farther.
  const mostPh = Math.max(limits.phHighNbs, ...unpoured.map(peakPh));
  let liftsPh = false;
  for (let days = Math.ceil(missing / (limit * SPARE)); days <= mostDays;) {
    const off = (grams: number) =>
      afterwards(runPlan(scenarioWith(days, grams)), start, days) - targetDkh;
    const alone = off(0);
    const most = gramsForDkh(
      additive,
      missing / days + 2 * corals.useDkhPerDay + 0.5,
      tank.volumeL,
    );
    const grams = alone >= -CLOSE_DKH ? 0 : doseWhere(off, 0, most, CLOSE_DKH);
    if (grams !== undefined) {
      const gramsPerDay = threeFigures(grams);
      const slow = slowEnough(scenarioWith(days, gramsPerDay));
      const lifts = slow !== undefined && peakPh(slow.runs[0]!) > mostPh;
      liftsPh ||= lifts;
      if (slow && !lifts) {
        const { scenario, largestDailyDkh } = slow;
        return gramsPerDay === 0
          ? { kind: 'rises', days, scenario, largestDailyDkh }
          : insideTheBand(days, gramsPerDay, slow.runs);
      }
    }
    days = Math.max(days + 1, Math.round(days * LONGER));
  }
  return liftsPh
    ? { kind: 'tooHighPh', additive, limitNbs: limits.phHighNbs }
    : { kind: 'tooFast', mostDkhPerDay: limit };

  /** The runs at every consumption, and their largest move; undefined as soon as one is too fast. */
  function slowEnough(scenario: Scenario) {
    let largestDailyDkh = moveDkh?.(scenario) ?? 0;
    const runs: Run[] = [];
    for (const end of endsOf(scenario, giveOrTakeDkhPerDay)) {
      if (largestDailyDkh > limit) return undefined;
      const found = runPlan(end);
      runs.push(found);
      if (!moveDkh) largestDailyDkh = Math.max(largestDailyDkh, largestMoveDkh(found));
    }
    return largestDailyDkh > limit ? undefined : { scenario, runs, largestDailyDkh };
  }

  /** With nothing poured in, at the least consumption: no dose makes that slower. */
  function risesTooFast(): boolean {
    const least = unpoured[1] ?? unpoured[0]!;
    const dkh = readColumn(least.trace, 'alkalinity_dkh');
    return dkh.at(-1)! > dkh[0]! && largestMoveDkh(least) > limit;
  }

  /** As many of those mornings as keep below the band's end, however little the corals take. */
  function insideTheBand(wanted: number, gramsPerDay: number, known: readonly Run[]): Raise {
    for (let days = wanted; days > 0; days--) {
      const scenario = scenarioWith(days, gramsPerDay);
      const runs = days === wanted ? known : runsOf(scenario);
      if (Math.max(...runs.map(highestDkh)) > limits.alkalinityHighDkh) continue;
      const stopsFor = days < wanted ? 'band' : 'target';
      return pouredBy(runs, { additive, gramsPerDay, days, scenario, stopsFor });
    }
    return { kind: 'unsure', giveOrTakeDkhPerDay };
  }
}
