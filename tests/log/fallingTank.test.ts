import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { STOCK_G_PER_L, twoPart } from '../../shared/recipe/twoPart';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { toDecimals } from '../../shared/units/digits';
import { run } from '../../workers/engine/run';
import { answerLog } from '../../workers/studies/answerLog';
import { patience, runsOf } from '../laws/size';

const AHEAD_DAYS = 7;
/** Readings are rounded to 0.1 dKH: over four of them use is told no nearer. */
const USE_WITHIN = 0.1;
const A_READING_DKH = 0.15;
const START_H = 20_454 * 24 + 10;

const evenly = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: 0, max: 10_000 })).map((n) => min + ((max - min) * n) / 10_000);

/** Corals that are dosed for in part, or not at all, or too much, tested every day. */
const anyFalling = fc.record({
  volumeL: evenly(40, 2000),
  useDkhPerDay: evenly(0.2, 2.5),
  dosedShare: fc.oneof(fc.constant(0), evenly(0, 1.4)),
  startDkh: evenly(7, 12),
  tests: fc.integer({ min: 4, max: 10 }),
});

/** A line through readings a day apart, by least squares: its height at the last, and its slope. */
function lineThrough(values: readonly number[]) {
  const middle = (values.length - 1) / 2;
  const mean = values.reduce((a, b) => a + b) / values.length;
  const square = values.reduce((sum, _, day) => sum + (day - middle) ** 2, 0);
  const slope =
    values.reduce((sum, value, day) => sum + (day - middle) * (value - mean), 0) / square;
  return { last: mean + slope * middle, slope };
}

it(
  'a tank that falls or rises by its readings is forecast nearer than their line, and its use is no other for the fall',
  () => {
    const found: { forecastDkh: number; lineDkh: number; useShare: number }[] = [];
    fc.assert(
      fc.property(anyFalling, ({ volumeL, useDkhPerDay, dosedShare, startDkh, tests }) => {
        const bare = scenarioOf({
          tank: { volumeL, alkalinityDkh: startDkh },
          days: tests - 1 + AHEAD_DAYS,
        });
        const grams = gramsForDkh('sodiumCarbonate', dosedShare * useDkhPerDay, volumeL);
        const ml = (1000 * grams) / STOCK_G_PER_L.sodiumCarbonate;
        const plan =
          dosedShare > 0 ? { ...bare, dosers: twoPart('sodiumCarbonate', ml, bare) } : bare;
        const truth = { ...plan, corals: { ...plan.corals, useDkhPerDay } };
        const dkh = readColumn(
          run({ ...truth, start: { ...truth.start, clockHour: 10 } }).trace,
          'alkalinity_dkh',
        );
        const readings = Array.from({ length: tests }, (_, day) => toDecimals(dkh[day * 24]!, 1));
        fc.pre(Math.min(...readings) > 5 && Math.max(...readings) < 14);
        const log = readings.map((alkalinityDkh, day) => ({
          ...{ at: localTimeOf(START_H + day * 24), alkalinityDkh },
        }));
        const answer = answerLog(plan, log, 0.1);
        if ('why' in answer) throw new Error(answer.why);
        const line = lineThrough(readings);
        const then = dkh[(tests - 1 + AHEAD_DAYS) * 24]!;
        found.push({
          forecastDkh: Math.abs(answer.fan.ahead.dkh[AHEAD_DAYS * 24]! - then),
          lineDkh: Math.abs(line.last + AHEAD_DAYS * line.slope - then),
          useShare: answer.now.corals.useDkhPerDay / useDkhPerDay,
        });
      }),
      runsOf(300),
    );
    expect(median(found, ({ forecastDkh }) => forecastDkh)!).toBeLessThan(
      0.2 * median(found, ({ lineDkh }) => lineDkh)!,
    );
    for (const { forecastDkh, lineDkh, useShare } of found) {
      expect(forecastDkh).toBeLessThan(lineDkh + A_READING_DKH);
      expect(Math.abs(useShare - 1)).toBeLessThan(USE_WITHIN);
    }
  },
  patience,
);
