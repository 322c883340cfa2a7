import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { oxygenLeft } from '../../shared/verdict/oxygenLeft';
import { patience, runsOf } from '../laws/size';
import { anyTank } from './anyPlan';
import { SAME_H, answerOf } from './anyDrill';

describe('a power cut', () => {
  const anyCut = fc
    .record({
      tank: anyTank,
      hour: fc.integer({ min: 0, max: 23 }),
      gasPercent: fc.double({ min: 0, max: 100, noNaN: true }),
      stocking: fc.constantFrom('few' as const, 'usual' as const, 'crowded' as const),
    })
    .map(({ tank, hour, gasPercent, stocking }): Scenario => ({
      ...tank,
      oxygen: { ...tank.oxygen, stocking },
      faults: [newFault('powerCut', { day: 1, hour, endsAfterH: 12, gasPercent })],
    }));

  it(
    'leads with oxygen, never sooner than with no air at all, and is at ease only where it lasts',
    async () => {
      let passed = 0;
      await fc.assert(
        fc.asyncProperty(anyCut, async (scenario) => {
          const answer = await answerOf(scenario);
          const told = drillSentences(answer, scenario);
          expect(told[0]).toMatch(/^Oxygen/);
          expect(told.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
          const left = oxygenLeft(answer, scenario);
          for (const { afterH, soonestH } of left) {
            if (afterH === undefined) continue;
            passed++;
            expect(soonestH).toBeLessThanOrEqual(afterH + SAME_H);
          }
          const isPassed = left.some(({ afterH }) => afterH !== undefined);
          if (isPassed) expect(told.join(' ')).not.toContain('Everything that is watched stays');
          if (answer.soonest && left[0]?.afterH !== undefined) {
            expect(answer.soonest.afterH).toBeLessThan(left[0].afterH);
          }
        }),
        runsOf(100),
      );
      expect(passed).toBeGreaterThan(3);
    },
    patience,
  );
});
