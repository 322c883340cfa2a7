import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutChalk } from '../../shared/scenario/chalk';
import { newFault } from '../../shared/scenario/newFault';
import { HIGHEST_PH_NBS } from '../../shared/trace/columns';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { passedAnyway } from '../../shared/verdict/anyway';
import { lineOf } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { patience, runsOf } from '../laws/size';
import { quietTank } from '../runs/quietTank';
import { SAME_H, SAME_PH, answerOf, anyStuckPump, worst } from './anyDrill';

describe('a drill', () => {
  it(
    'leads with the failure without chalk, never better than with it, and the worst hour is worse',
    async () => {
      await fc.assert(
        fc.asyncProperty(anyStuckPump, async (scenario) => {
          const answer = await answerOf(scenario);
          const own = runDrill(withoutChalk(scenario));
          expect(worst(answer.outcome.lines)).toBe(worst(own.lines));
          const calm = run({ ...withoutChalk(scenario), faults: [] });
          for (const { id } of passedAnyway(own.lines, answer.undisturbed)) {
            expect(lineOf(calm.lines, id).firstH, `${id} is not the failure's`).toBeDefined();
          }
          const outside = (lines: Parameters<typeof lineOf>[0]) => lineOf(lines, 'phHarm').outsideH;
          // Beyond the constants' range both are told as '>9.5'; there, water that chalk has
          // robbed of its carbon holds less hydroxide back.
          if (answer.chalk && worst(own.lines) <= HIGHEST_PH_NBS) {
            expect(worst(answer.chalk.lines)).toBeLessThanOrEqual(worst(own.lines) + SAME_PH);
            expect(outside(answer.chalk.lines)).toBeLessThanOrEqual(outside(own.lines) + SAME_H);
          }
          if (answer.worst) expect(answer.worst.peakPh).toBeGreaterThan(worst(own.lines));
          const told = drillSentences(answer, scenario);
          expect(told.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
          if (answer.chalk) expect(told.at(-1)).toContain('illustration');
          const isNews = (answer.worst?.peakPh ?? 0) > scenario.limits.phHighNbs;
          if (isNews) expect(told[0]).toContain('the worst hour of the day');
        }),
        runsOf(300),
      );
    },
    patience * 3,
  );

  it('lets chalk fall out of the same water as the failure without it', async () => {
    // Limewater takes carbon faster than this air brings it: with chalk its day would settle elsewhere.
    const fast = quietTank({
      days: 3,
      ...{ tank: { volumeL: 914 }, corals: { useDkhPerDay: 0 }, gas: { kLaPerH: 0.28 } },
      evaporation: { litresPerDay: 27 },
      topOff: {
        ...{ reservoirL: 73, pumpLPerH: 9, refillEveryDays: 2 },
        ...{ additive: 'calciumHydroxide', gramsPerL: 0.4 },
      },
      photosynthesis: { grossMmolPerLPerDay: 0.5 },
      faults: [newFault('topOffOn', { day: 1, hour: 21, endsAfterH: 2 })],
    });
    expect(settle(withoutChalk(fast), usualOptions).settled).toBe(false);
    const { chalk, outcome } = await answerOf(fast);
    expect(worst(chalk!.lines)).toBeLessThanOrEqual(worst(outcome.lines) + SAME_PH);
  });
});
