import { describe, expect, it } from 'vitest';
import { hoursOf } from '../../shared/log/localTime';
import { testDueH } from '../../src/ask/testDue';
import { nextTestSentence } from '../../src/say/fit/answer';
import type { LogAnswer } from '../../workers/studies/answerLog';
import type { Fit } from '../../workers/studies/fit/fitted';
import { noMetals } from '../../workers/studies/fit/metalsMoved';
import { nextTest } from '../../workers/studies/forecast/nextTest';

/** Level known to 0.2 dKH, use to 0.1 dKH a day, growth exactly; every hour of four weeks ahead. */
const covariance = [
  [0.04, 0, 0],
  [0, 0.01, 0],
  [0, 0, 0],
];
const timesH = Array.from({ length: 28 * 24 + 1 }, (_, hour) => hour);
const ahead = {
  timesH,
  dkh: timesH.map(() => 8),
  slopes: timesH.map((hour) => [1, -hour / 24, 0]),
  spreadDkh: timesH.map((hour) => Math.sqrt(0.04 + 0.01 * (hour / 24) ** 2)),
  restless: { levelDkh: 0, useDkhPerDay: 0 },
  suddenH: [],
  byLawDkh: timesH.map(() => 0),
};
const END_H = 96;
/** The fit of a log that ends so many days after its newest test. */
const fitOf = (daysAgo = 0) => ({
  now: {
    dkh: 8,
    useDkhPerDay: 1,
    typedUseDkhPerDay: 1,
    metalsMoved: noMetals,
    covariance,
    restless: ahead.restless,
    doubts: [],
  },
  endH: END_H,
  points: [
    { kind: 'alkalinity', timeH: END_H - 24 * daysAgo, value: 8, standardised: 0 },
  ] as unknown as Fit['points'],
});
const SIGMA = 0.15;

describe('the next test, by hand', () => {
  it('comes as soon as one more reading makes the use known', () => {
    // After a reading at t days its variance is 0.01 − (0.01 t)² ÷ (0.15² + 0.04 + 0.01 t²), and
    // 2σ = 0.1 wants 0.0025: t² = 18.75, t = 4.33 days.
    const found = nextTest(fitOf(), ahead, undefined, SIGMA, 0.1);
    expect(found.reason).toBe('known');
    expect(found.inDays).toBeCloseTo(Math.sqrt(18.75), 1);
  });

  it('or as many daily tests as the sum of their information says', () => {
    // Information adds up: I = diag(1/0.04, 1/0.01) + Σ (1, −day)ᵀ(1, −day) ÷ 0.15².
    const useVariance = (days: number) => {
      let [level, both, use] = [25, 0, 100];
      for (let day = 1; day <= days; day++) {
        level += 1 / SIGMA ** 2;
        both -= day / SIGMA ** 2;
        use += day ** 2 / SIGMA ** 2;
      }
      return level / (level * use - both ** 2);
    };
    const enough = Array.from({ length: 28 }, (_, i) => i + 1).find(
      (days) => 2 * Math.sqrt(useVariance(days)) <= 0.1,
    );
    expect(enough).toBe(4);
    expect(nextTest(fitOf(), ahead, undefined, SIGMA, 0.1).dailyTests).toBe(enough);
  });

  it('is due now once its day has passed: what was read then is no water to dose by', () => {
    const answer = {
      fit: { ...fitOf(), startAt: '2026-03-01T10:00' },
      now: { limits: { alkalinityLowDkh: 7, alkalinityHighDkh: 11 } },
      nextTest: nextTest(fitOf(), ahead, undefined, SIGMA, 0.1),
    } as unknown as LogAnswer;
    expect(nextTestSentence(answer, '2026-03-06T10:00')).toMatch(/^Test next on 9 March/);
    expect(nextTestSentence(answer, '2026-03-09T20:00')).toMatch(/^Test next on 9 March/);
    for (const late of ['2026-03-11T10:00', '2026-11-26T10:00']) {
      expect(nextTestSentence(answer, late)).toMatch(/^A test was due by 9 March: test now/);
    }
  });

  it('is the next day where the newest reading is outside the band, and today where it stands alone', () => {
    const point = (value: number, standardised: number) => ({
      fit: {
        ...{ ...fitOf(), startAt: '2026-03-01T10:00' },
        points: [{ kind: 'alkalinity', timeH: END_H, value, standardised }],
      },
      now: { limits: { alkalinityLowDkh: 7, alkalinityHighDkh: 11 } },
      nextTest: nextTest(fitOf(), ahead, undefined, SIGMA, 0.1),
    });
    const said = (value: number, standardised: number) => {
      const answer = point(value, standardised) as unknown as LogAnswer;
      return `${testDueH(answer) - hoursOf('2026-03-05T10:00')} ${nextTestSentence(answer, '2026-03-05T11:00')}`;
    };
    expect(said(8, 0)).toMatch(/^104 Test next on 9 March/);
    expect(said(11.8, 1)).toMatch(/^24 Test every day, .* back inside your limits/);
    expect(said(11.8, 15)).toMatch(/^0 Test the same water again today/);
  });

  it('is counted from the newest test, whatever was poured in since', () => {
    const never = 0.001;
    for (const daysAgo of [0, 1, 5, 6.75, 9, 40]) {
      const { inDays, reason, testedAtH } = nextTest(
        fitOf(daysAgo),
        ahead,
        undefined,
        SIGMA,
        never,
      );
      expect([inDays, reason, testedAtH]).toEqual([7 - daysAgo, 'weekly', END_H - 24 * daysAgo]);
    }
    // A day after a test is the same hour again; days after one it is due at once.
    const leaving = { side: 'low', odds: 0.5, oneInTenH: 0, halfH: 200 } as const;
    const due = (daysAgo: number) => nextTest(fitOf(daysAgo), ahead, leaving, SIGMA, never).inDays;
    expect([0, 0.25, 1, 3].map(due)).toEqual([1, 0.75, 0, 0]);
    const known = nextTest(fitOf(5), ahead, undefined, SIGMA, 0.1);
    expect([known.reason, known.inDays]).toEqual(['weekly', 2]);
  });
});
