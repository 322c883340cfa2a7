import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import { readColumn } from '../../../shared/trace/trace';
import type { Scenario } from '../../../shared/scenario/schema';
import type { Run } from '../../engine/run';
import type { CorrectionQuestion } from './correct';
import { peakPh, SPARE } from './holding';
import { afterwards, highestDkh, pouredBy, withMornings, type Poured } from './pouring';
import type { RunPlan } from './runPlan';
import { endsOf } from './useEnds';

/** Nearer than a test can tell, dKH. */
const UNTOLD_DKH = 0.1;
const HALVINGS = 6;

/** From one day to the next at the same hour, dKH: the day's own swing is nothing that a dose brings. */
function risesBy({ trace }: Run): number {
  const dkh = readColumn(trace, 'alkalinity_dkh');
  return dkh.subarray(24).reduce((most, value, hour) => Math.max(most, value - dkh[hour]!), 0);
}

/**
 * Where no row of mornings may be named, as much as the first of them may bring: at every consumption
 * that is possible it rises no faster than the limit, by the dose and by itself together, and stays below
 * the band's end; at the likeliest, below the target. How fast it falls, or swings by day and night, no
 * dose has in hand.
 */
export function oneMorning(
  runPlan: RunPlan,
  { upkeep, targetDkh, additive, giveOrTakeDkhPerDay }: CorrectionQuestion,
): Poured | undefined {
  const { tank, limits } = upkeep;
  const limit = limits.alkalinityChangeDkhPerDay;
  const runsOf = (scenario: Scenario) => endsOf(scenario, giveOrTakeDkhPerDay).map(runPlan);
  const unpoured = runsOf({ ...upkeep, days: 2 });
  const mostPh = Math.max(limits.phHighNbs, ...unpoured.map(peakPh));
  const most = Math.min(targetDkh - tank.alkalinityDkh, SPARE * limit);
  const at = (dkh: number): Poured | undefined => {
    const gramsPerDay = threeFigures(gramsForDkh(additive, dkh, tank.volumeL));
    const scenario = withMornings(upkeep, additive, 1, gramsPerDay);
    const runs = runsOf(scenario);
    const isSafe = (run: Run) =>
      risesBy(run) <= limit && highestDkh(run) <= limits.alkalinityHighDkh && peakPh(run) <= mostPh;
    const fits = afterwards(runs[0]!, upkeep.start, 1) <= targetDkh && runs.every(isSafe);
    return fits
      ? pouredBy(runs, { additive, gramsPerDay, days: 1, scenario, stopsFor: 'day' })
      : undefined;
  };
  const whole = at(most);
  let best = whole;
  let [low, high] = [0, most];
  for (let i = 0; !whole && i < HALVINGS; i++) {
    const dkh = (low + high) / 2;
    const found = at(dkh);
    if (found) [low, best] = [dkh, found];
    else high = dkh;
  }
  const brings = best && best.gramsPerDay >= gramsForDkh(additive, UNTOLD_DKH, tank.volumeL);
  return brings ? best : undefined;
}
