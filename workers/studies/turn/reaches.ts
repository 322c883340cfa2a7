import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { PlanQuestion } from '../plan/threePlans';
import { dayMeans } from '../dayMeans';
import { Seeker } from './seeker';

/** When a level is reached as the tank runs now; undefined where it is not within `REACHED_DAYS`. */
export interface Reached {
  readonly dkh: number;
  readonly days: number | undefined;
  /** At the use, of those thought possible, at which it comes soonest, and at which it comes last. */
  readonly soonestDays: number | undefined;
  readonly latestDays: number | undefined;
  /** Where the tank stands at the end of the time that was looked at, at the use itself. */
  readonly endsDkh: number;
}

/** So far ahead a date is looked for. */
export const REACHED_DAYS = 60;

/** The day on which the mean first is where it was asked for. */
function dayOf(means: readonly number[], dkh: number): number | undefined {
  const rises = dkh > means[0]!;
  const day = means.findIndex((mean) => (rises ? mean >= dkh : mean <= dkh));
  return day < 0 ? undefined : day;
}

/** "When does it reach 9?": the tank goes on as it runs, at the use and at either end of its doubt. */
export function reaches(
  {
    now,
    giveOrTakeDkhPerDay,
    byHand,
  }: Pick<PlanQuestion, 'now' | 'giveOrTakeDkhPerDay' | 'byHand'>,
  dkh: number,
  options: SimulationOptions = usualOptions,
): Reached {
  const seeker = new Seeker({ now, byHand }, dkh, options);
  const scenario: Scenario = seeker.now;
  const runs = seeker
    .uses(giveOrTakeDkhPerDay)
    .map((use) => dayMeans(seeker.replay([{ scenario, untilDay: REACHED_DAYS }], use).dkh));
  const days = runs.map((means) => dayOf(means, dkh));
  const known = days.filter((day) => day !== undefined);
  return {
    ...{ dkh, days: days[0], soonestDays: known.length > 0 ? Math.min(...known) : undefined },
    latestDays: known.length === days.length ? Math.max(...known) : undefined,
    endsDkh: runs[0]!.at(-1)!,
  };
}
