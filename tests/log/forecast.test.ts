import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { randomLcg, randomNormal } from 'd3-random';
import { deviation } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { answerLog, type LogAnswer } from '../../workers/studies/answerLog';
import { asItHappened } from '../../workers/studies/fit/asItHappened';
import { Model } from '../../workers/studies/fit/model';
import { parametersOf } from '../../workers/studies/fit/parameters';

const START_H = 20_454 * 24 + 10;
const plan = scenarioOf({
  type: 'paper-reef/scenario',
  version: 3,
  title: 'the wet lab of the lighthouse at Sorrel Point',
  days: 30,
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  limits: { alkalinityLowDkh: 7 },
});
const log: Reading[] = [8.4, 8.1, 8.2, 7.8, 7.7, 7.5].map((alkalinityDkh, day) => ({
  at: localTimeOf(START_H + day * 24),
  alkalinityDkh,
}));
const answered = (readings: readonly Reading[], within = 0.05): LogAnswer => {
  const answer = answerLog(plan, readings, within);
  if (typeof answer === 'string') throw new Error(answer);
  return answer;
};
const answer = answered(log);

describe('the forecast of a log', () => {
  it('fans out as whole draws through the engine do', () => {
    const { fit, fan } = answer;
    const happened = asItHappened(plan, log);
    const model = new Model(happened, parametersOf(happened));
    const root = new CholeskyDecomposition(new Matrix(fit.covariance.map((row) => [...row])));
    const normal = randomNormal.source(randomLcg(0.5))(0, 1);
    const at = [120, 264, 456];
    const drawn = Array.from({ length: 60 }, () => {
      const step = Matrix.columnVector(fit.estimates.map(() => normal()));
      const aside = root.lowerTriangularMatrix.mmul(step).getColumn(0);
      const values = fit.estimates.map(({ value }, i) => Math.max(0, value + aside[i]!));
      return [...model.alkalinityAt(values, at, [])];
    });
    at.forEach((timeH, k) => {
      const ofDraws = deviation(drawn, (one) => one[k])!;
      const ofFan = fan.spreadDkh[fan.timesH.indexOf(timeH)]!;
      // A standard deviation of 60 draws is known to about 9 %; three of those.
      expect(Math.abs(ofFan / ofDraws - 1)).toBeLessThan(0.28);
    });
  });

  it('says when the band is left, one in ten before half of them', () => {
    const { leaving, fit } = answer;
    expect(leaving!.side).toBe('low');
    expect(leaving!.odds).toBeGreaterThan(0.9);
    expect(leaving!.oneInTenH).toBeGreaterThan(fit.endH);
    expect(leaving!.oneInTenH!).toBeLessThan(leaving!.halfH!);
    // From 7.52 at 0.17 dKH a day it takes three days to 7.
    expect((leaving!.halfH! - fit.endH) / 24).toBeCloseTo(3, 0);
  });

  it('asks for the next test just when it makes the consumption known well enough', () => {
    const { nextTest, fan, fit } = answer;
    const days = nextTest.onceInDays!;
    expect(nextTest.known).toBe(false);
    const seAfter = (inDays: number) => {
      const timeH = fit.endH + inDays * 24;
      const k = fan.timesH.findIndex((t) => t >= timeH);
      const at = localTimeOf(Math.floor(START_H) + fan.timesH[k]!);
      const tested = [...log, { at, alkalinityDkh: fan.dkh[k]! }];
      return answered(tested).fit.estimates[0]!.standardError;
    };
    expect(2 * seAfter(days)).toBeLessThan(0.0515);
    expect(2 * seAfter(days - 1)).toBeGreaterThan(0.05);
  });

  it('names in words what the log cannot tell', () => {
    const notes = answer.notes.join(' ');
    expect(notes).toContain('Growth cannot be told apart');
    expect(notes).toContain('Gas exchange is not known from this log');
    expect(answered(log.slice(0, 3)).notes.join(' ')).toContain('Only 3 alkalinity readings');
  });
});
