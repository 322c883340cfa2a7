import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { answerLog } from '../../workers/studies/answerLog';
import { patience, runsOf } from '../laws/size';
import { AHEAD_DAYS, anyDosed, dosedTank, lineAhead, testedDaily } from './testedDaily';

/** Readings are rounded to 0.1 dKH: over four of them use is told no nearer. */
const USE_WITHIN = 0.1;
const A_READING_DKH = 0.15;

it(
  'a tank that falls or rises by its readings is forecast nearer than by their line, and its use is no other for the fall',
  () => {
    const found: { forecastDkh: number; lineDkh: number; useShare: number }[] = [];
    fc.assert(
      fc.property(fc.record(anyDosed), fc.integer({ min: 4, max: 10 }), (drawn, tests) => {
        const { plan, truth } = dosedTank(drawn, tests);
        const { dkh, log, values } = testedDaily(truth, tests);
        fc.pre(Math.min(...values) > 5 && Math.max(...values) < 14);
        const answer = answerLog(plan, log, 0.1);
        if ('why' in answer) throw new Error(answer.why);
        const then = dkh[(tests - 1 + AHEAD_DAYS) * 24]!;
        found.push({
          forecastDkh: Math.abs(answer.fan.ahead.dkh[AHEAD_DAYS * 24]! - then),
          lineDkh: Math.abs(lineAhead(values, AHEAD_DAYS) - then),
          useShare: answer.now.corals.useDkhPerDay / drawn.useDkhPerDay,
        });
      }),
      runsOf(300, 0.6),
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
