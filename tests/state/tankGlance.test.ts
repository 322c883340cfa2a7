import { expect, it } from 'vitest';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import { emptyLog } from '../../shared/log/tankLog';
import { scenarioOf } from '../../shared/scenario/write';
import { openingPlans } from '../../src/store/plans';
import type { Tank } from '../../src/store/tanks';
import { bySoonness, glanceOf } from '../../src/shelf/glance';
import { monthShape } from '../../src/shelf/monthShape';
import { stampText } from '../../src/shelf/stampText';
import { answerLog } from '../../workers/studies/index';
import { unansweredSentence } from '../../src/say/fit/unanswered';

const plan = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 0.8 },
  evaporation: { litresPerDay: 4 },
});
const FIRST_H = hoursOf('2026-05-01T09:00');

const tankOf = (id: string, tests: readonly number[]): Tank => ({
  ...{ id, name: `The ${id}`, bench: openingPlans(plan) },
  log: {
    ...emptyLog,
    readings: tests.map((alkalinityDkh, i) => ({
      at: localTimeOf(FIRST_H + 24 * i),
      alkalinityDkh,
    })),
  },
});

const seen = (tank: Tank, afterDays: number) => {
  const { readings } = tank.log;
  const found = answerLog(plan, readings, 0.1);
  const answer = 'why' in found ? unansweredSentence(found) : found;
  const now = localTimeOf(FIRST_H + 24 * (readings.length - 1 + afterDays));
  return glanceOf(tank, answer, now);
};

const falling = tankOf('nursery', [10.4, 10.2, 10, 9.8, 9.6, 9.4, 9.2]);
const slow = tankOf('lagoon', [10.4, 10.4, 10.3, 10.3, 10.3, 10.2, 10.2]);
const low = tankOf('pico', [7.2, 7, 6.9, 6.8, 6.6, 6.5, 6.3]);
const once = tankOf('cold room', [8.3]);
const never = tankOf('shed', []);

it('what is outside comes first, then what leaves soonest, and what nothing is known of last', () => {
  const glances = [never, once, slow, falling, low].map((tank) => seen(tank, 0));
  const order = bySoonness(glances).map(({ tank: { id } }) => id);
  expect(order).toEqual(['pico', 'nursery', 'lagoon', 'shed', 'cold room']);
  expect(stampText(glances[4]!)).toBe('outside now');
  expect(stampText(glances[1]!)).toBe('not known yet');
});

it('many readings that no tank fits want to be looked at before anything that still stands', () => {
  const tests = tankOf('basin', [8.4, 8.3, 8.3, 8.2, 8.2]);
  const unfitted = glanceOf(tests, unansweredSentence({ why: 'notConverged' }), '2026-05-06T09:00');
  const glances = [seen(slow, 0), seen(falling, 0), unfitted, seen(once, 0), seen(low, 0)];
  const order = bySoonness(glances).map(({ tank: { id } }) => id);
  expect(order.slice(0, 3)).toEqual(['pico', 'basin', 'nursery']);
});

it('days until it may leave are those of the log’s own answer, counted from now', () => {
  const answer = answerLog(plan, falling.log.readings, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  const inDays = answer.leaving!.oneInTenH! / 24;
  // The stamp counts to the day that the log names.
  const dateOf = (hours: number) => Date.parse(localTimeOf(hours).slice(0, 10)) / 86_400_000;
  const endH = FIRST_H + 24 * (falling.log.readings.length - 1);
  for (const afterDays of [0, 2, 4, 6]) {
    const { leavesInDays } = seen(falling, afterDays);
    expect(leavesInDays).toBe(dateOf(endH + 24 * inDays) - dateOf(endH + 24 * afterDays));
  }
  expect(seen(falling, 20).leavesInDays).toBe(-1);
  expect(stampText(seen(falling, 20))).toBe('may have left: test');
  // By hand: 0.2 dKH a day from 9.2 to the limit of 7 is eleven days; one chance in ten comes sooner.
  expect(inDays).toBeGreaterThan(7);
  expect(inDays).toBeLessThan(12);
});

it('a test whose day has passed is due, and a reading that is outside is seen before any fit', () => {
  expect(seen(slow, 0).isTestDue).toBe(false);
  expect(seen(slow, 9).isTestDue).toBe(true);
  const before = glanceOf(low, undefined, '2026-05-08T09:00');
  expect(stampText(before)).toBe('outside now');
});

it('every tank that has a line is drawn once, its name inside the picture and clear of the others', () => {
  const glances = [slow, falling, low, once].map((tank) => seen(tank, 0));
  const box = { width: 640, height: 300, left: 34, right: 140, top: 10, bottom: 24 };
  const { lines } = monthShape(glances, FIRST_H + 6 * 24, box);
  expect(lines.map(({ key }) => key).toSorted()).toEqual(['lagoon', 'nursery', 'pico']);
  const heights = lines.map(({ y }) => y).toSorted((a, b) => a - b);
  for (const [i, y] of heights.entries()) {
    expect(y).toBeGreaterThanOrEqual(0);
    expect(y).toBeLessThanOrEqual(300);
    if (i > 0) expect(y - heights[i - 1]!).toBeGreaterThanOrEqual(13 - 1e-9);
  }
  for (const { path } of lines) expect(path).not.toMatch(/NaN/);
});
