import { expect, it } from 'vitest';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario } from '../../shared/scenario/schema';
import { byDaySentence, reachedSentence } from '../../src/parts/log/dateWords';
import { turnSentences } from '../../src/parts/log/turnWords';
import { answerLog, planQuestion, reaches, turn } from '../../workers/studies/index';

const soda = { additive: 'sodiumCarbonate', gramsPerL: 60 } as const;
const chloride = { additive: 'calciumChlorideDihydrate', gramsPerL: 83 } as const;
const pumps = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1 },
  dosers: [
    { name: 'soda', recipe: [soda], mlPerDay: 80 },
    { name: 'calcium', recipe: [chloride], mlPerDay: 80 },
  ],
});
const lime = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1.2 },
  evaporation: { litresPerDay: 3 },
  topOff: { reservoirL: 8, additive: 'calciumHydroxide', gramsPerL: 1.2 },
});

const daily = (tests: readonly number[]): Reading[] =>
  tests.map((alkalinityDkh, i) => ({
    at: `2026-03-${String(i + 1).padStart(2, '0')}T10:30`,
    alkalinityDkh,
  }));

function asked(plan: Scenario, readings: readonly Reading[], targetDkh = 8.5) {
  const answer = answerLog(plan, readings, 0.1);
  const question = planQuestion(plan, readings, answer, { targetDkh });
  const found = turn({ ...question, plan });
  const told = turnSentences(
    { question, turn: found },
    { readings, answer: typeof answer === 'object' ? answer : undefined },
  );
  return { question, found, told, text: [told.headline, ...told.more].join(' ') };
}

it('turns both pumps of a pair together, by as much as the tests fall short', () => {
  const { found, text } = asked(pumps, daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]));
  expect(text).toMatch(
    /^Turn “soda” from 80 to [\d.]+ mL a day, “calcium” with it to [\d.]+; 7\.9 → 8\.5 dKH in \d+ days?; range/,
  );
  if (found.kind !== 'turn') throw new Error('there is a turn');
  const { turned } = found;
  // The fall of 0.07 dKH a day in 300 L by hand: 6 mL of this soda more.
  expect(turned.to).toBeGreaterThan(82);
  expect(turned.to).toBeLessThan(95);
  const [one, two] = turned.plan.dosers;
  expect(two!.mlPerDay / one!.mlPerDay).toBeCloseTo(1, 2);
  expect(turned.first.kind).toBe('pour');
  // What the keeper's plan says of everything else stays.
  expect({ ...turned.plan, dosers: [] }).toEqual({ ...pumps, dosers: [] });
  expect(byDaySentence(turned, 30)).toMatch(/^Yes: at 8\.5 dKH after/);
  expect(byDaySentence(turned, 0)).toMatch(/^Not within 0 days inside your daily limit/);
});

it('says when a level is reached as the tank runs, and when it never is', () => {
  const { question } = asked(pumps, daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]));
  expect(reachedSentence(reaches(question, 7.5))).toMatch(
    /^As the tank runs now it stands at 7\.5 dKH in about \d+ days/,
  );
  expect(reachedSentence(reaches(question, 9))).toMatch(/does not stand at 9 dKH within 60 days/);
});

it('has a sentence for no reading, one, contradictory ones, and a plan that doses nothing', () => {
  expect(asked(pumps, []).text).toMatch(/^No alkalinity reading yet/);
  expect(asked(pumps, daily([8])).text).toMatch(/Nobody has measured the use yet: 1\.00 ± 0\.20/);
  const torn = asked(pumps, daily([8.4, 6.1, 10.2, 7, 11, 6.4])).text;
  expect(torn).toMatch(/^The readings disagree: where the water stands is known no better than/);
  const idle = { ...pumps, dosers: [] };
  expect(asked(idle, daily([8.4, 8.2, 8, 7.8])).text).toMatch(
    /there is nothing to turn: the three/,
  );
});

it('adds one more channel where what evaporates carries too little', () => {
  const { found, text } = asked(lime, daily([8.4, 8.1, 7.9, 7.6, 7.4, 7.1]));
  expect(text).toMatch(/Leave what runs as it is, and add one more channel|No turn/);
  if (found.kind !== 'turn') throw new Error(text);
  expect(found.turned.lever).toBe('channel');
  expect(found.turned.plan.topOff).toEqual(lime.topOff);
});

it('mixes the reservoir with less where it brings too much, its own full dump told', () => {
  const { found, text } = asked(lime, daily([8.4, 8.5, 8.5, 8.6, 8.7, 8.7, 8.8, 8.9]));
  expect(text).toMatch(/^Mix the top-off with [\d.]+ g\/L instead of 1\.2/);
  if (found.kind !== 'turn') throw new Error('there is a turn');
  expect(found.turned.worstDump?.peakPh).toBeGreaterThan(8);
});
