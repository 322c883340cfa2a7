import fc from 'fast-check';
import { mean } from 'd3-array';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { straightLine } from '../../shared/log/slope';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { STOCK_G_PER_L, twoPart } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { toDecimals } from '../../shared/units/digits';
import { run } from '../../workers/engine/run';

/** So long after its last test the tank goes on as it ran. */
export const AHEAD_DAYS = 7;
export const CLOCK_HOUR = 10;
export const START_H = 20_454 * 24 + CLOCK_HOUR;

export const evenly = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: 0, max: 10_000 })).map((n) => min + ((max - min) * n) / 10_000);

/** Corals that are dosed for in part, or not at all, or too much. */
export const anyDosed = {
  volumeL: evenly(40, 2000),
  useDkhPerDay: evenly(0.2, 2.5),
  dosedShare: fc.oneof(fc.constant(0), evenly(0, 1.4)),
  startDkh: evenly(7, 12),
};

/** A tank and what its keeper types of it: all but what its corals take. */
export interface Dosed {
  readonly plan: Scenario;
  readonly truth: Scenario;
}

export function dosedTank(
  { volumeL, useDkhPerDay, dosedShare, startDkh }: Record<keyof typeof anyDosed, number>,
  tests: number,
): Dosed {
  const bare = scenarioOf({
    days: tests - 1 + AHEAD_DAYS,
    tank: { volumeL, alkalinityDkh: startDkh },
    start: { clockHour: CLOCK_HOUR },
  });
  const grams = gramsForDkh('sodiumCarbonate', dosedShare * useDkhPerDay, volumeL);
  const ml = (1000 * grams) / STOCK_G_PER_L.sodiumCarbonate;
  const plan = dosedShare > 0 ? { ...bare, dosers: twoPart('sodiumCarbonate', ml, bare) } : bare;
  return { plan, truth: { ...plan, corals: { ...plan.corals, useDkhPerDay } } };
}

/** Its true water, hour by hour, and a log of a test each day, read to 0.1 dKH. */
export function testedDaily(truth: Scenario, tests: number) {
  const dkh = readColumn(run(truth).trace, 'alkalinity_dkh');
  const log = Array.from({ length: tests }, (_, day): Reading => ({
    at: localTimeOf(START_H + day * 24),
    alkalinityDkh: toDecimals(dkh[day * 24]!, 1),
  }));
  return { dkh, log, values: log.map(({ alkalinityDkh }) => alkalinityDkh!) };
}

/** What a keeper with a ruler makes of readings, daily if nothing else is said, so long after the last. */
export function lineAhead(
  values: readonly number[],
  aheadDays: number,
  days: readonly number[] = [...values.keys()],
): number {
  const { slopeDkhPerDay } = straightLine(days, values, 0.1);
  return mean(values)! + slopeDkhPerDay * (days.at(-1)! + aheadDays - mean(days)!);
}
