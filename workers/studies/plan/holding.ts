import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { highest } from '../../../shared/verdict/measures';
import type { SimulationOptions } from '../../engine/simulation';
import { run, type Run } from '../../engine/run';
import { doseWhere } from './root';

/** A plan is made for so long; growth calls for a new one later. */
export const PLAN_DAYS = 28;
/** The mean of the last week tells a drift from a daily or weekly swing. */
const WEEK_H = 168;
/** So near to the target is on it, dKH. */
const CLOSE_DKH = 0.01;

export type RunPlan = (scenario: Scenario) => Run;

export const runsWith =
  (options: SimulationOptions): RunPlan =>
  (scenario) =>
    run(scenario, options);

export function lastWeekDkh({ trace }: Run): number {
  const dkh = readColumn(trace, 'alkalinity_dkh');
  const week = dkh.subarray(Math.max(0, dkh.length - WEEK_H));
  return week.reduce((sum, value) => sum + value, 0) / week.length;
}

export const peakPh = ({ trace }: Run): number => highest(trace, 'ph_nbs').value;

/** The dose that keeps the water at the target, or undefined when none up to `most` does. */
export const holdingDose = (
  runPlan: RunPlan,
  withDose: (dose: number) => Scenario,
  targetDkh: number,
  most: number,
): number | undefined =>
  doseWhere((dose) => lastWeekDkh(runPlan(withDose(dose))) - targetDkh, 0, most, CLOSE_DKH);
