import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import { farAhead, withNewestWater } from '../../shared/log/newest';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { farAheadSentences, outsideSentences, pressing } from '../../src/say/fit/answer';
import { answerLog } from '../../workers/studies/answerLog';
import { correct } from '../../workers/studies/plan/correct';
import { unansweredSentence } from '../../src/say/fit/unanswered';

const START_H = 20_454 * 24 + 10;
const plan = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
  title: 'the touch pool of the harbour school at Lindle Quay',
  days: 30,
  tank: { volumeL: 300, alkalinityDkh: 8.5 },
});
const at = (day: number) => localTimeOf(START_H + day * 24);

/** Why the log says nothing; empty where it says something. */
function whyNot(log: readonly Reading[]): string {
  const answer = answerLog(plan, log, 0.1);
  return 'why' in answer ? unansweredSentence(answer) : '';
}

describe('the newest reading of each quantity', () => {
  it('is where a plan and a correction begin, be it the only one', () => {
    const one: Reading[] = [{ at: at(0), alkalinityDkh: 6.2 }];
    const now = withNewestWater(plan, one);
    expect(now.tank.alkalinityDkh).toBe(6.2);
    expect(
      correct({
        upkeep: now,
        targetDkh: 8.5,
        giveOrTakeDkhPerDay: 0.1,
        additive: 'sodiumBicarbonate',
      }).kind,
    ).not.toBe('none');
    expect(whyNot(one)).toMatch(/^One alkalinity reading so far/);
    expect(outsideSentences(plan, one)).toEqual([
      'The newest reading of alkalinity, 6.2 dKH on 1 January, is outside your 7–11 dKH.',
    ]);
  });

  it('is said to be outside the limits, quantity by quantity, whatever was read before', () => {
    const log: Reading[] = [
      { at: at(0), calciumMgPerL: 430, magnesiumMgPerL: 1320, tempC: 25 },
      { at: at(9), calciumMgPerL: 370, magnesiumMgPerL: 1160 },
      { at: at(10), tempC: 31 },
    ];
    const said = outsideSentences(plan, log).join(' ');
    expect(said).toContain('370 mg/L');
    expect(said).toContain('1160 mg/L');
    expect(said).toContain('31 °C');
    const { tank } = withNewestWater(plan, log.toReversed());
    expect(tank).toMatchObject({ calciumMgPerL: 370, magnesiumMgPerL: 1160, tempC: 31 });
    expect(outsideSentences(plan, log.slice(0, 1))).toEqual([]);
  });

  it('of ammonia is told by what of it harms, at the pH that was read or the worst of the band', () => {
    const ammonia: Reading = { at: at(3), ammoniaMgPerL: 1.5 };
    const harms = (log: Reading[]) =>
      Number(/, ([\d.]+) mg\/L are un-ionised/.exec(outsideSentences(plan, log)[0] ?? '')?.[1]);
    // By hand: pKa near 9.3 in seawater of 25 °C, so at pH 8.2 (NBS; 8.08 total) a twentieth.
    expect(harms([{ ...ammonia, phNbs: 8.2 }])).toBeCloseTo(1.5 / (1 + 10 ** (9.3 - 8.08)), 1);
    expect(outsideSentences(plan, [ammonia])[0]).toContain('top of your band');
    expect(harms([ammonia])).toBeGreaterThan(harms([{ ...ammonia, phNbs: 8.2 }]));
    expect(pressing(plan, [ammonia])).toBe(true);
    const little = [{ at: at(3), ammoniaMgPerL: 0.05 }];
    expect([outsideSentences(plan, little), pressing(plan, little)]).toEqual([[], false]);
  });

  it('that is dated a lifetime ahead is said to stand alone, and is not fitted across', () => {
    const log = [0, 1, 2, 3].map((day): Reading => ({ at: at(day), alkalinityDkh: 8 }));
    const mistyped = [...log, { at: '2206-01-05T10:00', alkalinityDkh: 8 }];
    expect(farAhead(log, 60)).toBeUndefined();
    expect(farAheadSentences(mistyped)[0]).toMatch(/dated 2206-01-05, \d+ days after/);
    expect(whyNot(mistyped)).toMatch(/span \d+ days, from 2026-01-01 to 2206-01-05/);
  });

  it('of twenty thousand within a day is fitted in a breath', () => {
    const many = Array.from({ length: 20_000 }, (_, i): Reading => ({
      at: localTimeOf(START_H + Math.floor((i * 48) / 20_000)),
      alkalinityDkh: 8 + 0.1 * Math.sin(i),
    }));
    const begun = performance.now();
    expect(whyNot(many)).toBe('');
    expect(performance.now() - begun).toBeLessThan(10_000);
  });
});
