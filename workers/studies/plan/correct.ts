import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { oneMorning } from './oneMorning';
import { raise } from './raise';
import { runningPlans } from './runPlan';
import { standingAt } from './standingAt';
import { wait } from './wait';
import { withReference } from './withReference';

/** How the water gets to the target without breaking a daily limit. */
export type Correction =
  | { readonly kind: 'none' }
  /** Nothing gets there within the limit: what holds the water today is too far off. */
  | { readonly kind: 'tooFast'; readonly mostDkhPerDay: number }
  /** Every dose that gets there lifts pH beyond the keeper's limit. */
  | { readonly kind: 'tooHighPh'; readonly additive: Carbonate; readonly limitNbs: number }
  /** At the least consumption that is possible, one dose already takes it above the band. */
  | { readonly kind: 'unsure'; readonly giveOrTakeDkhPerDay: number }
  /** The plan's own dosing brings it there, with nothing poured in. */
  | {
      readonly kind: 'rises';
      readonly days: number;
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
    }
  | {
      readonly kind: 'raise';
      readonly additive: Carbonate;
      readonly gramsPerDay: number;
      readonly days: number;
      /**
       * What ends the mornings: the target; the band, which more of them might leave at the least
       * consumption; or the day, where no more than one of them is known to be slow enough.
       */
      readonly stopsFor: 'target' | 'band' | 'day';
      /** Mean of the day after the last dose, dKH, at the highest and the least consumption. */
      readonly endsDkh: readonly [number, number];
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
      readonly peakPh: number;
    }
  | {
      readonly kind: 'wait';
      /** Days until the water stands at the target; undefined when it never gets there in time. */
      readonly days: number | undefined;
      /** The same at the highest and at the least consumption that is possible. */
      readonly daysBetween: readonly [number | undefined, number | undefined];
      /** Share of the plan's dose that goes on meanwhile: 0 unless the fall would be too fast. */
      readonly shareOfDose: number;
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
    };

/** Nearer than a test can tell, dKH. */
const NEAR_DKH = 0.1;

/** What a correction is asked from. */
export interface CorrectionQuestion {
  /** The tank as it stands, with the dosing that is to hold it. */
  readonly upkeep: Scenario;
  readonly targetDkh: number;
  /** How far the consumption may be off, either way. */
  readonly giveOrTakeDkhPerDay: number;
  /** What is poured in when the water is low. */
  readonly additive: Carbonate;
}

/**
 * From what the water is to the target, on runs of the engine at every consumption that is
 * possible: by weighed doses when it is low, by waiting when it is high. `runsBy` is the plan that the
 * tank runs by until then, where that is another.
 */
export function correct(
  question: CorrectionQuestion,
  options: SimulationOptions = usualOptions,
  runsBy: Scenario = question.upkeep,
): Correction {
  const off = question.targetDkh - question.upkeep.tank.alkalinityDkh;
  if (Math.abs(off) < NEAR_DKH) return { kind: 'none' };
  const runPlan = runningPlans(standingAt(withReference(runsBy, options), options), options);
  if (off < 0) return wait(runPlan, question);
  const found = raise(runPlan, question);
  return (found.kind === 'tooFast' ? oneMorning(runPlan, question) : undefined) ?? found;
}
