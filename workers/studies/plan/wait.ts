import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import type { Run } from '../../engine/run';
import type { Correction, CorrectionQuestion } from './correct';
import { largestMoveDkh, SPARE } from './holding';
import { doseWhere } from './root';
import type { RunPlan } from './runPlan';
import { endsOf } from './useEnds';

const MOST_DAYS = 60;
const CLOSE_DKH = 0.02;
/** A dose is turned down in steps of a hundredth. */
const upToHundredth = (share: number) => Math.min(1, Math.ceil(share * 100) / 100);

const dosedAt = (plan: Scenario, share: number): Scenario => ({
  ...plan,
  days: MOST_DAYS,
  additions: [],
  dosers: plan.dosers.map((doser) => ({ ...doser, mlPerDay: doser.mlPerDay * share })),
  topOff: { ...plan.topOff, gramsPerL: plan.topOff.gramsPerL * share, settledG: 0 },
});

/** Days until the water first stands at a level; undefined when it never does. */
function daysUntil({ trace }: Run, targetDkh: number): number | undefined {
  const hour = readColumn(trace, 'alkalinity_dkh').findIndex((value) => value <= targetDkh);
  return hour < 0 ? undefined : hour / 24;
}

/** The dose falls to nothing, or to the share that keeps the fall inside the daily limit. */
export function wait(
  runPlan: RunPlan,
  { upkeep, targetDkh, giveOrTakeDkhPerDay }: CorrectionQuestion,
): Extract<Correction, { kind: 'wait' | 'tooFast' }> {
  const limit = upkeep.limits.alkalinityChangeDkhPerDay;
  const runsOf = (scenario: Scenario) => endsOf(scenario, giveOrTakeDkhPerDay).map(runPlan);
  const largest = (runs: readonly Run[]) => Math.max(...runs.map(largestMoveDkh));
  const still = (share: number) =>
    limit * SPARE - largest(runsOf({ ...dosedAt(upkeep, share), days: 3 }));
  const needed = still(0) >= 0 ? 0 : (doseWhere(still, 0, 1, CLOSE_DKH) ?? 1);
  const shareOfDose = upToHundredth(needed);
  const scenario = dosedAt(upkeep, shareOfDose);
  const reached = runsOf(scenario).map((found) => daysUntil(found, targetDkh));
  const days = reached[0];
  const shown = { ...scenario, days: Math.max(1, Math.ceil(days ?? MOST_DAYS)) };
  const largestDailyDkh = largest(runsOf(shown));
  return largestDailyDkh > limit
    ? { kind: 'tooFast', mostDkhPerDay: limit }
    : {
        ...{ kind: 'wait', days, shareOfDose, scenario: shown, largestDailyDkh },
        daysBetween: [reached.at(-1), reached.length === 1 ? days : reached[1]],
      };
}
