import { expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { lineOf } from '../../shared/verdict/lineResult';
import { boughtText } from '../../src/say/drill/boughtText';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { usualOptions } from '../../workers/engine/simulation';
import { actsBuy } from '../../workers/studies/drill/actsBuy';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { patience } from '../laws/size';

const goOn = () => Promise.resolve(true);
const stuck = (gramsPerL: number, endsAfterH: number): Scenario => ({
  ...scenarioOf({
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 1.1 },
    evaporation: { litresPerDay: 4 },
    topOff: { reservoirL: 18, additive: 'calciumHydroxide', gramsPerL },
  }),
  days: 4,
  faults: [newFault('topOffOn', { hour: 2, endsAfterH })],
});

it(
  'the worse leads in a drill: no act calls a milder pH the worst, and nothing “stays below” beside an hour that does not',
  async () => {
    const [seen, milder] = [new Set<string>(), new Set<string>()];
    for (const gramsPerL of [0.8, 1, 1.1]) {
      for (const hours of [2, 3, 4, 6]) {
        const drill = stuck(gramsPerL, hours);
        const answer = (await rehearse(drill, usualOptions, goOn))!;
        const harm = lineOf(answer.outcome.lines, 'phHarm');
        const texts = drillSentences(answer, drill);
        if (answer.worst && answer.worst.peakPh > harm.limit && harm.firstH === undefined) {
          milder.add(texts[0]!);
          expect(texts[0]).toContain('worst hour');
        }
        if (answer.worst && answer.worst.peakPh > harm.limit) {
          expect(texts.join(' ')).not.toMatch(/it stays below 9/);
        }
        const bought = (await actsBuy(drill, usualHandAir, usualOptions, goOn))!;
        for (const one of bought.acts.filter(({ gain }) => gain === 'lower')) {
          const text = boughtText(one, bought);
          seen.add(one.act);
          expect(text).not.toContain('at the worst');
          expect(text).toMatch(
            /begun at this hour, in the tank that is worst off .* without it; with it/,
          );
          if (one.act !== 'unplugTopOff' || one.line.id !== 'phHigh') continue;
          const alone = { ...drill, faults: [{ ...drill.faults[0]!, endsAfterH: 94 }] };
          const without = lineOf(runDrill(alone).lines, 'phHigh').worst;
          // Some of the tanks that this may be go farther than the one that is set.
          expect(one.farthest[0]).toBeGreaterThan(without);
          expect(one.farthest[1]).toBeGreaterThan(lineOf(answer.outcome.lines, 'phHigh').worst);
        }
      }
    }
    expect(seen).toContain('unplugTopOff');
    expect(milder.size).toBeGreaterThan(0);
  },
  patience * 2,
);
