import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import type { Correction } from './correct';
import type { RunPlan } from './holding';
import { largestMoveDkh } from './holding';
import { doseWhere } from './root';

const SPARE = 0.9;
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

/** The dose falls to nothing, or to the share that keeps the fall inside the daily limit. */
export function wait(
  runPlan: RunPlan,
  upkeep: Scenario,
  targetDkh: number,
): Extract<Correction, { kind: 'wait' | 'tooFast' }> {
  const limit = upkeep.limits.alkalinityChangeDkhPerDay;
  const move = (share: number) => largestMoveDkh(runPlan({ ...dosedAt(upkeep, share), days: 3 }));
  const still = (share: number) => limit * SPARE - move(share);
  const needed = still(0) >= 0 ? 0 : (doseWhere(still, 0, 1, CLOSE_DKH) ?? 1);
  const shareOfDose = upToHundredth(needed);
  const scenario = dosedAt(upkeep, shareOfDose);
  const dkh = readColumn(runPlan(scenario).trace, 'alkalinity_dkh');
  const there = dkh.findIndex((value) => value <= targetDkh);
  const days = there < 0 ? undefined : there / 24;
  const shown = { ...scenario, days: Math.max(1, Math.ceil(days ?? MOST_DAYS)) };
  const largestDailyDkh = largestMoveDkh(runPlan(shown));
  return largestDailyDkh > limit
    ? { kind: 'tooFast', mostDkhPerDay: limit }
    : { kind: 'wait', days, shareOfDose, scenario: shown, largestDailyDkh };
}
