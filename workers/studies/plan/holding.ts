import { mean } from 'd3-array';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { lineOf } from '../../../shared/verdict/lineResult';
import type { Run } from '../../engine/run';
import { dayMeans } from '../dayMeans';
import { doseWhere } from './root';
import type { RunPlan } from './runPlan';

/** A plan is made for so long; growth calls for a new one later. */
export const PLAN_DAYS = 28;
/** After this a plan has come to rest, and from here on it is to hold the target. */
export const RESTED_H = 7 * 24;
/** So near to the target is on it, dKH. */
const CLOSE_DKH = 0.01;

/** Means of every whole day once the plan has come to rest: a daily swing is no drift. */
export function dailyMeans({ trace }: Run): number[] {
  const dkh = readColumn(trace, 'alkalinity_dkh');
  const means = dayMeans(dkh);
  if (means.length === 0) return [mean(dkh)!];
  return means.slice(Math.min(RESTED_H / 24, means.length - 1));
}

/** Half way between the highest and the lowest: growth is shared out over the plan's weeks. */
export function heldDkh(run: Run): number {
  const means = dailyMeans(run);
  return (Math.max(...means) + Math.min(...means)) / 2;
}

/** The dose that keeps the water about the target, or undefined when none up to `most` does. */
export const holdingDose = (
  runPlan: RunPlan,
  withDose: (dose: number) => Scenario,
  targetDkh: number,
  most: number,
): number | undefined =>
  doseWhere((dose) => heldDkh(runPlan(withDose(dose))) - targetDkh, 0, most, CLOSE_DKH);

/** A daily limit is kept with a tenth to spare. */
export const SPARE = 0.9;

/** Largest move of alkalinity within any twenty-four hours, up or down, dKH. */
export const largestMoveDkh = ({ lines }: Run): number => lineOf(lines, 'alkalinityChange').worst;

/** Highest pH at any moment, NBS. */
export const peakPh = ({ lines }: Run): number => lineOf(lines, 'phHigh').worst;
