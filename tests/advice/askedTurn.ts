import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario } from '../../shared/scenario/schema';
import { turnSentences } from '../../src/say/turn/turn';
import { turn } from '../../workers/desk/logQuestions';
import { answerLog } from '../../workers/studies/index';

const soda = { additive: 'sodiumCarbonate', gramsPerL: 60 } as const;
const chloride = { additive: 'calciumChlorideDihydrate', gramsPerL: 83 } as const;
/** A pair of pumps that brings 1 dKH a day to 300 L. */
export const pumps = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1 },
  dosers: [
    { name: 'soda', recipe: [soda], mlPerDay: 80 },
    { name: 'calcium', recipe: [chloride], mlPerDay: 80 },
  ],
});
export const lime = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1.2 },
  evaporation: { litresPerDay: 3 },
  topOff: { reservoirL: 8, additive: 'calciumHydroxide', gramsPerL: 1.2 },
});

/** A test each morning from the first of March. */
export const daily = (tests: readonly number[]): Reading[] =>
  tests.map((alkalinityDkh, i) => ({
    at: `2026-03-${String(i + 1).padStart(2, '0')}T10:30`,
    alkalinityDkh,
  }));

/** Asked on the evening of the newest reading, unless another moment is given. */
export async function asked(
  plan: Scenario,
  readings: readonly Reading[],
  targetDkh = 8.5,
  now = `${readings.at(-1)?.at.slice(0, 10) ?? '2026-03-01'}T20:00`,
) {
  const answer = answerLog(plan, readings, 0.1);
  const known = 'why' in answer ? undefined : answer;
  const turned = await turn({ plan, log: readings, known, wanted: { targetDkh } });
  const { question, turn: found, untilKnown } = turned;
  const told = turnSentences(turned, { readings, answer: known, now });
  return { question, found, untilKnown, told, text: [told.headline, ...told.more].join(' ') };
}
