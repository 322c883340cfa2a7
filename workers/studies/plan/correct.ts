import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { peakPh } from './holding';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { run } from '../../engine/run';
import type { TankState } from '../../engine/tankState';
import { raise } from './raise';
import { wait } from './wait';

/** How the water gets to the target without breaking a daily limit. */
export type Correction =
  | { readonly kind: 'none' }
  /** Nothing gets there within the limit: what holds the water today is too far off. */
  | { readonly kind: 'tooFast'; readonly mostDkhPerDay: number }
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
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
      readonly peakPh: number;
    }
  | {
      readonly kind: 'wait';
      /** Days until the water stands at the target; undefined when it never gets there in time. */
      readonly days: number | undefined;
      /** Share of the plan's dose that goes on meanwhile: 0 unless the fall would be too fast. */
      readonly shareOfDose: number;
      readonly scenario: Scenario;
      readonly largestDailyDkh: number;
    };

/** Nearer than a test can tell, dKH. */
const NEAR_DKH = 0.1;

/**
 * From what the water is to the target, on runs of the engine: by weighed doses when it is low, by
 * waiting when it is high. `upkeep` is the tank as it stands with the dosing that holds it; `from` is
 * the water of the plan that it runs by until then, where that is another.
 */
export function correct(
  upkeep: Scenario,
  targetDkh: number,
  additive: Carbonate,
  options: SimulationOptions = usualOptions,
  from?: TankState,
): Correction {
  const runPlan = (scenario: Scenario) => run(scenario, options, from);
  const off = targetDkh - upkeep.tank.alkalinityDkh;
  if (Math.abs(off) < NEAR_DKH) return { kind: 'none' };
  if (off < 0) return wait(runPlan, upkeep, targetDkh);
  const found = raise(runPlan, upkeep, targetDkh, additive);
  if (found.kind !== 'raise') return found;
  return { ...found, peakPh: peakPh(runPlan(found.scenario)) };
}
