import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { previewImport, understand } from '../../shared/log/csv/importLog';
import { countedReadings } from '../../shared/log/counted';
import { hoursOf, localTimeOf } from '../../shared/log/localTime';
import { inOrder, type Reading } from '../../shared/log/reading';
import { emptyLog } from '../../shared/log/tankLog';
import { readTyped } from '../../shared/log/typedReading';
import { answerLog } from '../../workers/studies/answerLog';
import { unansweredSentence } from '../../src/say/fit/unanswered';
import { tooLittle } from '../../workers/studies/fit/tooLittle';
import { patience, runsOf } from '../laws/size';
import { scenarioFromFile } from '../runs/scenarioFiles';

const NOW = '2026-03-10T12:00';
const plan = scenarioFromFile('do-nothing.json');
const six = [8.4, 8.1, 8.2, 7.8, 7.7, 7.5].map((alkalinityDkh, i) => ({
  at: `2026-03-0${i + 1}T10:30`,
  alkalinityDkh,
}));
const mistyped = { at: '2206-03-07T10:30', alkalinityDkh: 7.4 };
const logOf = (readings: readonly Reading[], more = {}) => ({
  ...{ ...emptyLog, readings: inOrder(readings), ...more },
});

describe('a mistyped year', () => {
  it('does not hide the readings beside it', () => {
    const { readings, future } = countedReadings(logOf([...six, mistyped]), NOW);
    expect([readings, future]).toEqual([six, [mistyped]]);
    const answer = answerLog(plan, readings, 0.1);
    expect('fit' in answer && answer.fit.endH / 24).toBeCloseTo(5, 0);
  });

  it('does not make the answer look back over centuries, with a start date neither', () => {
    const old = { at: '1926-03-01T10:30', alkalinityDkh: 8.6 };
    const log = logOf([old, ...six, mistyped], { fitFrom: '1900-01-01T00:00' });
    const { readings, tooOld, future } = countedReadings(log, NOW);
    expect([readings, tooOld, future.length]).toEqual([six, 1, 1]);
  });

  it.each([
    ['2206-03-07T10:30', false],
    ['2026-03-12T00:00', false],
    ['2026-03-11T11:00', true],
    ['2026-03-10T12:00', true],
    ['2001-01-01T00:00', true],
    ['1926-03-10T12:00', false],
  ])('is refused where it is typed, pasted or read: %s', (at, taken) => {
    const typed = readTyped({ at, alkalinityDkh: '8.4' }, {}, NOW);
    expect(typed.ok).toBe(taken);
    const rows = [
      ['when', 'alkalinity (dKH)'],
      [at, '8.4'],
    ];
    const preview = previewImport(rows, understand(rows), [], NOW);
    expect(preview.taken).toHaveLength(taken ? 1 : 0);
    const said = [
      ...(typed.ok ? [] : typed.problems),
      ...preview.refused.flatMap((r) => r.reasons),
    ];
    for (const reason of said) expect(reason).toMatch(/^When: got “.*”; expected .*year/);
    expect(said).toHaveLength(taken ? 0 : 2);
  });
});

it(
  'any log gives an answer of bounded size: nothing of tomorrow, two years, 2,000 lines',
  () => {
    const anyMoment = fc
      .integer({ min: hoursOf('1900-01-01T00:00'), max: hoursOf('2999-12-31T00:00') })
      .map(localTimeOf);
    const anyLog = fc.record({
      readings: fc.array(fc.oneof(anyMoment, fc.constantFrom(...six.map(({ at }) => at))), {
        maxLength: 60,
      }),
      fitFrom: fc.option(anyMoment, { nil: '' }),
      heldAt: fc.option(anyMoment, { nil: '' }),
    });
    fc.assert(
      fc.property(anyLog, ({ readings: moments, fitFrom, heldAt }) => {
        const lines = moments.map((at) => ({ at, alkalinityDkh: 8 }));
        const { readings } = countedReadings(logOf(lines, { fitFrom, heldAt }), NOW);
        if (readings.length === 0) return;
        const [first, last] = [readings[0]!.at, readings.at(-1)!.at];
        expect(hoursOf(last)).toBeLessThanOrEqual(hoursOf(NOW) + 24);
        expect(hoursOf(last) - hoursOf(first)).toBeLessThanOrEqual(731 * 24);
        if (fitFrom) expect(first >= fitFrom).toBe(true);
        if (heldAt) expect(last <= heldAt).toBe(true);
      }),
      runsOf(3000),
    );
  },
  patience,
);

it('eight years of weekly tests, all asked for, are answered from the newest two', () => {
  const weekly = Array.from({ length: 8 * 52 }, (_, week) => ({
    ...{ at: localTimeOf(hoursOf(NOW) - week * 168), alkalinityDkh: 8 },
  }));
  const fitFrom = '2010-01-01T00:00';
  const { readings, tooOld } = countedReadings(logOf(weekly, { fitFrom }), NOW);
  // 731 days hold 104 weeks and the reading that begins them.
  expect([readings.length, tooOld]).toEqual([105, 8 * 52 - 105]);
  expect(tooLittle(readings)).toBeUndefined();
  expect(unansweredSentence(tooLittle(weekly)!)).toMatch(/at most two years/);
});

describe('far too many readings', () => {
  /** 25 s before; a slow machine gets some five times what it takes here. */
  const PATIENT_MS = 12_000;

  it('in one minute do not drown the six beside them, and are answered in bounded time', () => {
    const minute = Array.from({ length: 20_000 }, (_, i) => ({
      ...{ at: '2026-03-07T09:15', alkalinityDkh: 7.4 + 0.001 * (i % 100) },
    }));
    const { readings, tooMany } = countedReadings(logOf([...six, ...minute]), NOW);
    expect([readings.length, tooMany]).toEqual([26, 19_980]);
    expect(readings.slice(0, 6)).toEqual(six);
    const began = performance.now();
    expect(answerLog(plan, readings, 0.1)).toMatchObject({ fit: { endH: expect.any(Number) } });
    expect(performance.now() - began).toBeLessThan(PATIENT_MS);
  });

  it('over a month are counted from the newest', () => {
    const month = Array.from({ length: 20_000 }, (_, i) => ({
      ...{ at: localTimeOf(hoursOf(NOW) - (i * 30 * 24) / 20_000), alkalinityDkh: 8 },
    }));
    const { readings, tooMany } = countedReadings(logOf(month), NOW);
    expect([readings.length, tooMany]).toEqual([2000, 18_000]);
    expect(readings.at(-1)!.at).toBe(NOW);
  });

  it('is told where it is tried when it is meant to lie ahead', () => {
    const saturday = readTyped(
      { at: '2026-03-14T09:00', coralsPercent: '-33' },
      {},
      '2026-03-10T18:00',
    );
    expect(saturday.ok ? '' : saturday.problems.join()).toMatch(
      /expected a day up to 11 March 2026; .* tried on the bench; corals that leave/,
    );
  });
});
