import { expect, it } from 'vitest';
import { LONGEST_NOTE, type Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { lineOf } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { withUse } from '../../workers/studies/plan/useEnds';
import { byDaySentence, reachedSentence } from '../../src/say/turn/dates';
import { dumpSentences } from '../../src/say/plan/dump';
import { turnNote } from '../../src/say/turn/turned';
import { turnedAt } from '../../src/say/turn/turnedAt';
import { steerSentences } from '../../src/say/turn/steer';
import { turnSentences } from '../../src/say/turn/turn';
import { nextTestSentence, useSentence } from '../../src/say/fit/answer';
import { turnedSentences } from '../../src/say/turn/turned';
import { asked, daily, lime, pumps } from './askedTurn';
import { metalWants } from '../../src/diary/season/seasonAsked';
import { emptyLog } from '../../shared/log/tankLog';
import { steer, turn } from '../../workers/desk/logQuestions';
import { answerLog, reaches } from '../../workers/studies/index';

it('turns nothing by a log whose next test is overdue: that test comes first', async () => {
  const tests = daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]);
  const { told } = await asked(pumps, tests, 8.5, '2026-04-02T09:00');
  expect(told.headline).toBe(
    'The newest reading is of 8 March, and the next test is overdue: test first, the rest follows from it.',
  );
  // What is poured in later is no reading.
  const poured: Reading = { at: '2026-03-20T20:00', additive: 'sodiumBicarbonate', grams: 3 };
  const later = await asked(pumps, [...tests, poured], 8.5, '2026-04-20T09:00');
  expect(later.told.headline).toContain('of 8 March');
  expect(told.more).toHaveLength(1);
  expect(told.more[0]).toMatch(/^By that reading it would have been: Turn “soda” from 80 to/);
});

it('turns both pumps of a pair together, by as much as the tests fall short', async () => {
  const { found, text } = await asked(pumps, daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]));
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

it('turns one bottle of a pair alone where they are unlinked, and says what calcium does then', async () => {
  const readings = daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]);
  const answer = answerLog(pumps, readings, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  const asks = { plan: pumps, log: readings, known: answer };
  const [linked, alone] = await Promise.all(
    [false, true].map((unlinked) => turn({ ...asks, wanted: { targetDkh: 8.5, unlinked } })),
  );
  if (linked!.turn.kind !== 'turn' || alone!.turn.kind !== 'turn') throw new Error('two turns');
  const { turned } = alone!.turn;
  expect(linked!.turn.turned.apart).toBeUndefined();
  expect(turned.pumps.map(({ name }) => name)).toEqual(['soda']);
  expect(turned.plan.dosers[1]!.mlPerDay).toBe(80);
  const { apart } = turned;
  // Less calcium comes in than goes out with what is dosed of alkalinity.
  expect(apart!.calciumMgPerL).toBeLessThan(apart!.togetherMgPerL);
  const { more } = turnSentences(alone!, { readings, answer, now: '2026-03-08T20:00' });
  expect(more.join(' ')).toMatch(
    /The bottles are unlinked: “calcium” stays at 80 mL a day\. Calcium then stands at \d+ mg\/L on day 28; turned together it would be \d+\./,
  );
});

it('says of calcium that it needs something of its own, unless that is told beside it', async () => {
  const poor = { ...pumps, tank: { ...pumps.tank, calciumMgPerL: 370 } };
  const first = { at: '2026-03-01T09:00', calciumMgPerL: 370 };
  const readings = [first, ...daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9])];
  const answer = answerLog(poor, readings, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  const told = await turn({ plan: poor, log: readings, known: answer, wanted: { targetDkh: 8.5 } });
  const wants = metalWants(poor, emptyLog);
  const beside = await steer({ plan: poor, told, happened: readings, wants });
  expect(beside.steered?.wanting.map(({ id }) => id)).toContain('calcium');
  const around = { readings, answer, now: '2026-03-08T20:00' };
  const ownNeed = /Calcium passes your limit .* needs something of its own/;
  expect(turnSentences(told, around).more.join(' ')).toMatch(ownNeed);
  expect(turnSentences(told, around, beside).more.join(' ')).not.toMatch(ownNeed);
});

/** The keeper's own: limewater that just holds 1.1 dKH a day, more of it than may go in at once. */
const fullLime = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.5 },
  corals: { useDkhPerDay: 1.1 },
  evaporation: { litresPerDay: 4 },
  topOff: { reservoirL: 18, additive: 'calciumHydroxide', gramsPerL: 1.1 },
});

it('turns nothing, and buys nothing, where the readings cannot tell that anything falls', async () => {
  const { found, told } = await asked(fullLime, daily([8.4, 8.5, 8.3, 8.4, 8.5, 8.4]));
  expect(told.headline).toMatch(
    /^Leave the top-off at 1\.1 g\/L; 8\.4 dKH is close to 8\.5; range/,
  );
  if (found.kind !== 'turn') throw new Error('it is left');
  const { turned } = found;
  expect([turned.to, turned.first.kind, turned.pumps]).toEqual([1.1, 'none', []]);
  // Its own dump does harm: said, with how much may stand there.
  const said = dumpSentences(turned.worstDump!, turned.scenario.limits, turned.fullestL).join(' ');
  expect(said).toMatch(/That is past pH 9, which harms/);
  expect(said).not.toMatch(/below the pH that harms: two/);
  expect(said).toMatch(/No more than [\d.]+ L of it may stand in the reservoir/);
});

it('says why one more channel is proposed, and not more of what runs', async () => {
  const { told } = await asked(fullLime, daily([8.4, 8.1, 8.2, 7.8, 7.7, 7.5]));
  expect(told.headline).toMatch(/add one more channel/);
  expect(told.more[0]).toMatch(/^What runs already, turned as far as it goes, brings the water to/);
});

it('lets an overshoot fall, by less of what runs or by none of it, and never brings more in', async () => {
  const cases: readonly [readonly number[], number][] = [
    [[11], 8.5],
    [[11], 9],
    [[11.4, 11.3, 11.4, 11.3], 8.5],
  ];
  for (const [tests, target] of cases) {
    const { found, untilKnown, told, text } = await asked(fullLime, daily(tests), target);
    expect(text).not.toMatch(/stronger mix|0 mL a day each|add one more channel/);
    if (untilKnown?.kind === 'wait') {
      expect(told.headline).toMatch(
        /^From 11\.\d down to \d.*(dose nothing, plain water in the top-off|dose less \(0\.\d+ g\/L)/,
      );
      // By hand: 1.1 dKH a day, and more above 8.5 dKH.
      expect(untilKnown.days).toBeLessThanOrEqual((11.4 - target) / (1.1 - untilKnown.shareOfDose));
      expect(untilKnown.largestDailyDkh).toBeLessThanOrEqual(1);
    } else {
      if (found.kind !== 'turn') throw new Error(`${tests.join()} to ${target}: ${text}`);
      expect(found.turned.first.kind).toBe('less');
      expect(found.turned.plan.topOff.gramsPerL).toBeLessThan(1);
    }
  }
});

it('waits for a test where something was turned after the newest, and keeps what goes with it', async () => {
  const readings = daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]);
  const { found } = await asked(pumps, readings);
  if (found.kind !== 'turn') throw new Error('there is a turn');
  const { turned } = found;
  expect(turnNote(turned, 0)).toMatch(/^Turned: Turn “soda”.*Besides, pour in .* g of sodium bic/);
  // Whatever the pumps are called, the log can keep it.
  const named = { toMlPerDay: 90, fromMlPerDay: 80, name: 'x'.repeat(60) };
  const longest = turnNote({ ...turned, pumps: Array(12).fill(named) }, 0);
  expect(longest).toHaveLength(LONGEST_NOTE);
  const ran = [{ until: '2026-03-08T20:30', plan: pumps }];
  const { at } = readings.at(-1)!;
  expect(turnedAt(ran, turned.plan, at)).toBe('2026-03-08T20:30');
  expect(turnedAt([{ until: at, plan: pumps }], turned.plan, at)).toBe(at);
  // Taken back, or read again since: it is turned no more.
  const back = [...ran, { until: '2026-03-08T21:00', plan: turned.plan }];
  expect(turnedAt(back, pumps, at)).toBeUndefined();
  expect(turnedAt(ran, turned.plan, '2026-03-09T10:30')).toBeUndefined();
  const answer = answerLog(turned.plan, readings, 0.1, undefined, ran);
  if ('why' in answer) throw new Error(answer.why);
  // The note of it says nothing of the water: the log ends with its newest test.
  const note = { at: '2026-03-08T20:30', notes: turnNote(turned, 0) };
  expect(answerLog(turned.plan, [...readings, note], 0.1, undefined, ran)).toEqual(answer);
  const again = await turn({
    ...{ plan: turned.plan, log: readings, known: answer, wanted: { targetDkh: 8.5 } },
  });
  const told = turnSentences(again, {
    ...{ readings, answer, now: '2026-03-08T22:00' },
    turnedAt: turnedAt(ran, turned.plan, at),
  });
  expect(told).toEqual({
    headline: expect.stringMatching(/^What runs was turned on 8 March, by the reading of 8 March/),
    more: [],
  });
});

it('says when a level is reached as the tank runs, and when it never is', async () => {
  const { question } = await asked(pumps, daily([8.4, 8.3, 8.3, 8.2, 8.1, 8.1, 8, 7.9]));
  expect(reachedSentence(reaches(question, 7.5))).toMatch(
    /^As the tank runs now it stands at 7\.5 dKH in about \d+ days/,
  );
  expect(reachedSentence(reaches(question, 9))).toMatch(/does not stand at 9 dKH within 60 days/);
});

it('has a sentence for no reading, one, contradictory ones, and a plan that doses nothing', async () => {
  expect((await asked(pumps, [])).text).toMatch(/^No alkalinity reading yet/);
  expect((await asked(pumps, daily([8]))).text).toMatch(
    /nobody has measured the use, 1\.00 ± 0\.20/,
  );
  const torn = (await asked(pumps, daily([8.4, 6.1, 10.2, 7, 11, 6.4]))).text;
  expect(torn).toMatch(/^The readings disagree: where the water stands is known no better than/);
  const idle = { ...pumps, dosers: [] };
  expect((await asked(idle, daily([8.4, 8.2, 8, 7.8]))).text).toMatch(
    /^From 7\.8 to 8\.5 dKH, with what runs left as it is: pour in .* it falls again: begin one of the three plans .* instead of this, not besides\.$/,
  );
});

it('adds one more channel where what evaporates carries too little', async () => {
  const { found, text } = await asked(lime, daily([8.4, 8.1, 7.9, 7.6, 7.4, 7.1]));
  expect(text).toMatch(/Leave what runs as it is, and add one more channel|No turn/);
  if (found.kind !== 'turn') throw new Error(text);
  expect(found.turned.lever).toBe('channel');
  expect(found.turned.plan.topOff).toEqual(lime.topOff);
});

it('mixes the reservoir with less where it brings too much, its own full dump told', async () => {
  const { found, text } = await asked(lime, daily([8.4, 8.5, 8.5, 8.6, 8.7, 8.7, 8.8, 8.9]));
  expect(text).toMatch(/^Mix the top-off with [\d.]+ g\/L instead of 1\.2/);
  if (found.kind !== 'turn') throw new Error('there is a turn');
  expect(found.turned.worstDump?.peakPh).toBeGreaterThan(8);
});

it('one reading of 6.2 is raised at once, and nothing is turned by a use that nobody has measured', async () => {
  const { question, untilKnown, told, text } = await asked(pumps, daily([6.2]));
  expect(told.headline).toMatch(
    /^From 6\.2 to 8\.5 dKH, with what runs left as it is: pour in [\d.]+ g of sodium bicarbonate \(for 300 L\) on each of the first \d+ mornings/,
  );
  // One thing to pour and one thing not to turn: no second dose, and no date beside that of the log.
  expect(text.match(/pour in/g)).toHaveLength(1);
  expect(text).toMatch(/Leave what runs as it is until two tests some days apart tell/);
  expect(text).not.toMatch(/test again/i);
  if (untilKnown?.kind !== 'raise') throw new Error('it is raised');
  // What runs is left as it is.
  expect(untilKnown.scenario.dosers).toEqual(question.now.dosers);
  // By hand: 2.3 dKH in 300 L are 2.3 · 0.357 meq/L · 300 L · 84.0 mg/meq = 20.7 g.
  const grams = untilKnown.gramsPerDay * untilKnown.days;
  expect(grams).toBeGreaterThan(0.6 * 20.7);
  expect(grams).toBeLessThan(1.5 * 20.7);
  for (const use of [0.8, 1, 1.2]) {
    const { lines } = run(withUse(untilKnown.scenario, use));
    const { alkalinityChangeDkhPerDay, alkalinityHighDkh } = pumps.limits;
    expect(lineOf(lines, 'alkalinityChange').worst).toBeLessThanOrEqual(alkalinityChangeDkhPerDay);
    expect(lineOf(lines, 'alkalinityHigh').worst).toBeLessThan(alkalinityHighDkh);
  }
});

it('no way to turn is asked of a tank that doses nothing, but a low reading is raised', async () => {
  const { told } = await asked({ ...pumps, dosers: [] }, daily([6.2]));
  expect(told.headline).toMatch(/^From 6\.2 to 8\.5 dKH, with what runs left as it is/);
  expect(told.more.at(-1)).toMatch(/goes in instead of this, not besides\.$/);
});

it('turns nothing by a newest reading that stands alone: the same water is tested again today', async () => {
  const tests = daily([8.4, 8.5, 8.4, 8.5, 8.4, 8.5, 11.8]);
  const { told } = await asked(pumps, tests);
  expect(told.headline).toMatch(
    /^The newest reading, 11\.8 dKH, does not fit the 8\.\d ± 0\.\d dKH .* again today, before you turn/,
  );
  expect(told.more).toEqual([]);
  const answer = answerLog(pumps, tests, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  expect(nextTestSentence(answer, '2026-03-07T20:00')).toMatch(/^Test the same water again today/);
});

it('says of readings that rise by more than is dosed that they tell no use, and where to look', async () => {
  const again = { at: '2026-03-03T11:30', alkalinityDkh: 11.6 };
  const tests = [...daily([8.5, 8.6, 11.8]), again];
  const answer = answerLog(pumps, tests, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  expect(useSentence(answer)).toMatch(/^These readings do not tell what the tank uses.*\(−\d/);
  const { found, told } = await asked(pumps, tests);
  expect(found.kind).toBe('refused');
  expect([told.headline, ...told.more].join(' ')).toMatch(
    /do not tell what the tank uses\. Look first whether a pump ran on.*above your 11 dKH.*no acid/,
  );
  expect(nextTestSentence(answer, '2026-03-03T20:00')).toMatch(/^Test/);
  expect(nextTestSentence(answer, '2026-03-03T20:00')).not.toMatch(/week/);
});

it('knows a rise that no dosing explains, and never says that such water does not come down', async () => {
  // Limewater brings 1 dKH a day at the most: 4.5 in one day is something else.
  const { text } = await asked(lime, daily([8.5, 8.6, 8.5, 8.5, 13, 12.9]));
  expect(text).toMatch(
    /^Turn nothing and pour nothing in yet: what moved the water at once between two readings/,
  );
  expect(text).not.toContain('does not come down');
  const poured = { at: '2026-03-04T20:30', additive: 'sodiumBicarbonate', grams: 40 } as const;
  const noted = daily([8.5, 8.6, 8.5, 8.5, 13, 12.9]).toSpliced(4, 0, poured);
  expect((await asked(lime, noted)).text).not.toMatch(/nothing in yet/);
  const since = daily([8.5, 8.6, 8.5, 8.5, 11.2, 11, 10.8]);
  expect((await asked(lime, since)).text).not.toMatch(/nothing in yet/);
});

it('does not tell somebody who is to dose less to leave what runs as it is', async () => {
  const { text } = await asked(pumps, daily([11.8]));
  expect(text).toMatch(/^From 11\.8 down to 8\.5 dKH: dose less .* The tests on the way down tell/);
  expect(text).not.toContain('Leave what runs as it is');
});

it('says of what does not come back inside by what is told that this is a part of the way', async () => {
  const salty = { at: '2026-03-07T09:00', salinityPractical: 39 };
  const readings = [...daily([8.4, 8.5, 8.4, 8.5, 8.4, 8.5, 8.4]), salty].toSorted((a, b) =>
    a.at.localeCompare(b.at),
  );
  const answer = answerLog(pumps, readings, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  const told = await turn({
    plan: pumps,
    log: readings,
    known: answer,
    wanted: { targetDkh: 8.5 },
  });
  const wants = metalWants(pumps, emptyLog);
  const beside = await steer({ plan: pumps, told, happened: readings, wants });
  const said = (ppt: number) => {
    const steered = beside.steered!;
    const together = { ...steered.together!, ends: { ...steered.together!.ends!, salinity: ppt } };
    const around = { readings, answer, now: '2026-03-07T20:00' };
    return steerSentences({ ...beside, steered: { ...steered, together } }, told, around).join(' ');
  };
  expect(said(36.9)).toMatch(/36\.9 ppt\. Salinity is then still outside your limit of 36\.0 ppt/);
  expect(said(36.04)).not.toContain('still outside');
});

it('turns a pump off rather than to what no pump can be set to', async () => {
  const idle = { ...pumps, corals: { ...pumps.corals, useDkhPerDay: 0.004 } };
  const { found } = await asked(idle, []);
  if (found.kind !== 'turn') throw new Error('there is a turn');
  expect(found.turned.to).toBe(0);
  expect(found.turned.pumps.map(({ toMlPerDay }) => toMlPerDay)).toEqual([0, 0]);
});

it('a turn that stands outside the band at a possible use is on its way, and not inside', async () => {
  const { found } = await asked(pumps, daily([8.4, 8.2, 8, 7.8, 7.6]));
  if (found.kind !== 'turn') throw new Error(found.kind);
  const told = (lowDkh: number, highDkh: number) => {
    const settled = { days: 2, lowDkh, highDkh };
    const around = { readings: [], answer: undefined, now: '' };
    return turnedSentences({ ...found.turned, settled, promisedDays: 8 }, 0, around).join(' ');
  };
  expect(told(8, 9)).toMatch(/from then on, until day 8/);
  for (const outside of [told(6.4, 10.8), told(8, 11.5)]) {
    expect(outside).toMatch(/on its way until then: until day 8/);
    expect(outside).not.toContain('from then on');
  }
});

it('a tank that runs out of calcium and falls is not told to bring less', async () => {
  const bare = scenarioOf({ tank: { volumeL: 240, alkalinityDkh: 8.2 } });
  // 2.6 g of soda ash at 8:00 and 20:00, tested at 19:00: it falls by 0.05 dKH a day.
  const soda = (day: number, hour: string): Reading => ({
    at: `2026-03-${String(day).padStart(2, '0')}T${hour}`,
    ...{ additive: 'sodiumCarbonate', grams: 2.6 },
  });
  const days = Array.from({ length: 14 }, (_, i) => i + 1);
  const log = days.flatMap((day): Reading[] => [
    soda(day, '08:00'),
    {
      at: `2026-03-${String(day).padStart(2, '0')}T19:00`,
      alkalinityDkh: Math.round(10 * (8.2 - 0.05 * day)) / 10,
    },
    soda(day, '20:00'),
  ]);
  const { found, text } = await asked(bare, log, 8.5, '2026-03-14T20:30');
  if (found.kind === 'turn') expect(found.turned.to).toBeGreaterThanOrEqual(2.6);
  else expect(text).toContain('bring calcium as well');
});
