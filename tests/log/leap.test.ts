import { mean, median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { slopeSentence } from '../../src/say/fit/answer';
import { leapSentences } from '../../src/say/fit/leap';
import { usePerDay } from '../../shared/verdict/measures';
import { run } from '../../workers/engine/run';
import { answerLog } from '../../workers/studies/answerLog';
import { patience, runsOf } from '../laws/size';
import { AHEAD_DAYS, anyDosed, dosedTank, evenly, lineAhead, testedDaily } from './testedDaily';

const anyLeap = fc.record({
  ...anyDosed,
  byDkh: evenly(1, 4),
  /** Tests before what was poured in and not noted, and since. */
  before: fc.integer({ min: 3, max: 6 }),
  since: fc.integer({ min: 2, max: 5 }),
});

it(
  'what was poured in and not noted is told with its days, and is no use: nearer than a line through all, or since',
  () => {
    const found: Record<'own' | 'line' | 'since', number>[] = [];
    const tried = { told: 0, all: 0 };
    fc.assert(
      fc.property(anyLeap, ({ byDkh, before, since, ...drawn }) => {
        const tests = before + since;
        const { plan, truth } = dosedTank(drawn, tests);
        const grams = gramsForDkh('sodiumBicarbonate', byDkh, drawn.volumeL);
        const poured = { day: before, hour: 20, additive: 'sodiumBicarbonate', grams } as const;
        const { dkh, log, values } = testedDaily({ ...truth, additions: [poured] }, tests);
        fc.pre(Math.min(...values) > 5 && Math.max(...values) < 15);
        const answer = answerLog(plan, log, 0.1);
        if ('why' in answer) throw new Error(answer.why);
        const then = dkh[(tests - 1 + AHEAD_DAYS) * 24]!;
        const off = (at: number) => Math.abs(at - then);
        found.push({
          own: off(answer.fan.ahead.dkh[AHEAD_DAYS * 24]!),
          line: off(lineAhead(values, AHEAD_DAYS)),
          since: off(lineAhead(values.slice(before), AHEAD_DAYS)),
        });
        const [leap] = answer.fit.leaps;
        tried.all++;
        if (!leap) return;
        tried.told++;
        expect(Math.round(leap.afterH / 24)).toBe(before);
        expect(leap.byDkh).toBeGreaterThan(0.7 * byDkh);
        expect(leap.byDkh).toBeLessThan(1.3 * byDkh);
        expect(slopeSentence(answer)).toBe('');
        expect(leapSentences(answer)[0]).toMatch(/^Between the readings of \d+ January? and/);
      }),
      runsOf(300, 0.5),
    );
    expect(tried.told / tried.all).toBeGreaterThan(0.9);
    const middle = (name: keyof (typeof found)[number]) => median(found, (one) => one[name])!;
    expect(middle('own')).toBeLessThan(0.25 * middle('line'));
    expect(middle('own')).toBeLessThan(0.25 * middle('since'));
    const farther = found.filter(({ own, line, since }) => own > Math.min(line, since) + 0.15);
    expect(farther.length / found.length).toBeLessThan(0.1);
  },
  patience,
);

const anySundays = fc.record({
  ...anyDosed,
  byDkh: evenly(0.8, 2.5),
  weeks: fc.integer({ min: 3, max: 6 }),
});

const FIFTH = {
  ...{ volumeL: 807.928, useDkhPerDay: 1.32792, dosedShare: 0.26558, startDkh: 11.3625 },
  ...{ byDkh: 2.4813, weeks: 5 },
};

/** Mean fall of the days on which nothing was poured in, dKH a day. */
function fallBetween(values: readonly number[]): number {
  const falls = values.slice(1).map((value, i) => values[i]! - value);
  return mean(falls.filter((_, i) => i % 7 !== 6))!;
}

it(
  'what is poured in every Sunday and never noted is no use either: nearer than what falls between the Sundays',
  () => {
    const found: Record<'own' | 'byHand' | 'line', number>[] = [];
    fc.assert(
      fc.property(anySundays, ({ byDkh, weeks, ...drawn }) => {
        const tests = 7 * weeks;
        const { plan, truth } = dosedTank(drawn, tests);
        const grams = gramsForDkh('sodiumBicarbonate', byDkh, drawn.volumeL);
        const additions = Array.from({ length: weeks - 1 }, (_, i) => ({
          ...{ day: 7 * (i + 1), hour: 20, additive: 'sodiumBicarbonate' as const, grams },
        }));
        const { trace } = run({ ...truth, additions });
        const { log, values } = testedDaily({ ...truth, additions }, tests);
        fc.pre(Math.min(...values) > 5 && Math.max(...values) < 15);
        const answer = answerLog(plan, log, 0.1);
        if ('why' in answer) throw new Error(answer.why);
        const { leaps } = answer.fit;
        if (leaps.length > 2) {
          expect(leapSentences(answer)).toHaveLength(1);
          expect(leapSentences(answer)[0]).toMatch(/^\d times alkalinity stands .*by \+\d/);
        }
        const takenDkh = usePerDay(trace, 24 * (tests - 3), 24 * (tests - 1));
        const dosedDkh = drawn.dosedShare * drawn.useDkhPerDay;
        const off = (use: number) => Math.abs(use - takenDkh);
        const ahead = lineAhead(values, 1) - lineAhead(values, 0);
        found.push({
          own: off(answer.useNow.dkhPerDay),
          byHand: off(dosedDkh + fallBetween(values)),
          line: off(dosedDkh - ahead),
        });
      }),
      // The first look at this one finds a fifth leap, which the other four have made.
      { ...runsOf(150, 0.35), examples: [[FIFTH]] },
    );
    const middle = (name: keyof (typeof found)[number]) => median(found, (one) => one[name])!;
    expect(middle('own')).toBeLessThan(0.7 * middle('byHand'));
    expect(middle('own')).toBeLessThan(0.3 * middle('line'));
    // Of each tank, too: no worse than arithmetic by more than a kit tells.
    for (const { own, byHand } of found) expect(own).toBeLessThan(byHand + 0.1);
  },
  patience,
);

it('readings of pH beside it change neither its days nor how much it is', () => {
  const { plan, truth } = dosedTank(
    { volumeL: 300, useDkhPerDay: 0.5, dosedShare: 0.5, startDkh: 8.6 },
    9,
  );
  const grams = gramsForDkh('sodiumBicarbonate', 2, 300);
  const additions = [{ day: 5, hour: 20, additive: 'sodiumBicarbonate' as const, grams }];
  const { log } = testedDaily({ ...truth, additions }, 9);
  const answer = answerLog(
    plan,
    log.map((reading) => ({ ...reading, phNbs: 8.1 })),
    0.1,
  );
  if ('why' in answer) throw new Error(answer.why);
  expect(answer.fit.leaps).toHaveLength(1);
  const [leap] = answer.fit.leaps;
  expect([leap!.beforeH / 24, leap!.afterH / 24]).toEqual([4, 5]);
  expect(leap!.byDkh).toBeGreaterThan(1.6);
  expect(leap!.byDkh).toBeLessThan(2.4);
});
