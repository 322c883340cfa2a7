import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import { spokenDay } from '../../shared/log/spokenTime';
import { scenarioOf } from '../../shared/scenario/write';
import { isTestDue } from '../../src/ask/testDue';
import { nextTestSentence } from '../../src/say/fit/answer';
import { calendarText, remindersOf } from '../../src/diary/reminders';
import { answerLog } from '../../workers/studies/index';

const plan = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 0.8 },
  topOff: { reservoirL: 20, refillEveryDays: 4 },
});
const FIRST_H = hoursOf('2026-05-01T09:40');
const readings = [8.4, 8.3, 8.2, 8.2, 8, 7.9].map((alkalinityDkh, i) => ({
  at: localTimeOf(FIRST_H + 24 * i),
  alkalinityDkh,
}));
const found = answerLog(plan, readings, 0.1);
if ('why' in found) throw new Error(found.why);
const answer = found;
const tank = { id: 'tank-1', name: 'The lagoon; by the pier, north' };

/** Lines of an iCalendar file, folded ones put together (RFC 5545, 3.1). */
const linesOf = (text: string) => text.replace(/\r\n[ \t]/g, '').split('\r\n');

it('reminds of the day that the log names, at the hour of the newest reading', () => {
  const now = localTimeOf(FIRST_H + 24 * 5);
  const [test] = remindersOf(tank, plan, answer, now);
  expect(nextTestSentence(answer, now)).toContain(spokenDay(test!.at));
  expect(test!.at).toMatch(/T09:40$/);
});

it('who doses by hand every day, and writes it down, is told that the test is overdue', () => {
  const doses = Array.from({ length: 18 }, (_, i) => ({
    at: localTimeOf(FIRST_H + 24 * (6 + i) + 3.5),
    ...{ additive: 'sodiumBicarbonate' as const, grams: 4 },
  }));
  const poured = answerLog(plan, [...readings, ...doses], 0.1);
  if ('why' in poured) throw new Error(poured.why);
  const evening = localTimeOf(FIRST_H + 24 * 23 + 8);
  expect(isTestDue(poured, evening)).toBe(true);
  expect(nextTestSentence(poured, evening)).toMatch(/^A test was due by (9|1[0-3]) May: test now/);
  expect(remindersOf(tank, plan, poured, evening)[0]!.at > evening).toBe(true);
});

it('whatever the hour at which it is taken, nothing lies in the past and the file stays the same thing', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 24 * 60 * 90 }), (minutes) => {
      const now = localTimeOf(FIRST_H + 24 * 5 + minutes / 60);
      const reminders = remindersOf(tank, plan, answer, now);
      expect(reminders.map(({ id }) => id)).toEqual(['tank-1-test', 'tank-1-refill']);
      for (const { at } of reminders) expect(at > now).toBe(true);
    }),
  );
});

it('is an iCalendar file as RFC 5545 has it: CRLF, 75 octets a line, floating time, escaped text', () => {
  const now = '2026-05-06T10:00';
  const text = calendarText(tank.name, remindersOf(tank, plan, answer, now), now);
  for (const line of text.split('\r\n')) {
    expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(line).not.toMatch(/[\n\r]/);
  }
  const lines = linesOf(text);
  expect(lines[0]).toBe('BEGIN:VCALENDAR');
  expect(lines.filter((line) => line === 'BEGIN:VEVENT')).toHaveLength(2);
  // No zone and no Z: a tank's clock is the one on its wall.
  const starts = lines.filter((line) => line.startsWith('DTSTART'));
  for (const start of starts) expect(start).toMatch(/^DTSTART:\d{8}T\d{6}$/);
  expect(lines).toContain('SUMMARY:Test alkalinity: The lagoon\\; by the pier\\, north');
  expect(lines).toContain('RRULE:FREQ=DAILY;INTERVAL=4');
});

it('reminds of no refill where nothing is refilled by hand', () => {
  const without = { ...plan, topOff: { ...plan.topOff, refillEveryDays: 0 } };
  expect(remindersOf(tank, without, answer, '2026-05-06T10:00')).toHaveLength(1);
});
