import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { randomLcg, randomNormal } from 'd3-random';
import { deviation, mean } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { answerLog, type LogAnswer } from '../../workers/studies/answerLog';
import { readColumn } from '../../shared/trace/trace';
import { usePerDay } from '../../shared/verdict/measures';
import { habitSentence } from '../../src/say/fit/answer';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { hourlyDkh } from '../../workers/studies/forecast/hourly';
import { varianceOf } from '../../workers/studies/fit/leastSquares';
import { notesOf } from '../../src/say/fit/notes';

const START_H = 20_454 * 24 + 10;
const plan = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
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
  if ('why' in answer) throw new Error(answer.why);
  return answer;
};
const answer = answered(log);

describe('the forecast of a log', () => {
  it('fans out as whole draws through the engine do', () => {
    const { fit, fan, now } = answer;
    const root = new CholeskyDecomposition(new Matrix(fit.now.covariance.map((row) => [...row])))
      .lowerTriangularMatrix;
    const normal = randomNormal.source(randomLcg(0.5))(0, 1);
    const days = [4, 10, 18];
    const drawn = Array.from({ length: 60 }, () => {
      const aside = root.mmul(Matrix.columnVector([normal(), normal(), normal()])).getColumn(0);
      const { tank, corals } = now;
      const { trace } = run({
        ...now,
        days: 18,
        tank: { ...tank, alkalinityDkh: tank.alkalinityDkh + aside[0]! },
        corals: {
          ...corals,
          useDkhPerDay: Math.max(0, corals.useDkhPerDay + aside[1]!),
          growthPercentPerDay: Math.max(0, corals.growthPercentPerDay + aside[2]!),
        },
      });
      return days.map((day) => readColumn(trace, 'alkalinity_dkh')[day * 24]!);
    });
    days.forEach((day, k) => {
      const ofDraws = deviation(drawn, (one) => one[k])!;
      const ofFan = Math.sqrt(varianceOf(fan.ahead.slopes[day * 24]!, fit.now.covariance));
      // A standard deviation of 60 draws is known to about 9 %; three of those.
      expect(Math.abs(ofFan / ofDraws - 1)).toBeLessThan(0.28);
      // What wanders on comes on top.
      expect(fan.ahead.spreadDkh[day * 24]!).toBeGreaterThan(ofFan);
    });
  });

  it('begins where the log ends, with what is said of the use', () => {
    const { now, useNow, fan, fit } = answer;
    expect(fan.ahead.dkh[0]).toBeCloseTo(fit.now.dkh, 1);
    const { trace } = run({ ...now, days: 2 });
    // It was taken from water that stood 0.34 dKH higher, and growth follows saturation down.
    const goesOn = usePerDay(trace, 0, 48) / useNow.dkhPerDay;
    expect(goesOn).toBeLessThan(1);
    expect(goesOn).toBeGreaterThan(0.96);
    expect(now.start.omegaReference).toBe(fit.scenario.start.omegaReference);
  });

  it('begins with the newest reading of every other quantity', () => {
    const salts = [430, 410, 400, 390, 380, 370].map((calciumMgPerL, day) => ({
      ...log[day]!,
      calciumMgPerL,
      magnesiumMgPerL: 1320 - 32 * day,
    }));
    const { tank, start } = answered(salts).now;
    expect(tank.calciumMgPerL).toBe(370);
    expect(tank.magnesiumMgPerL).toBe(1160);
    expect(start.clockHour).toBe(10);
  });

  it('says when the band is left, one in ten before half of them', () => {
    const { leaving } = answer;
    expect(leaving!.side).toBe('low');
    expect(leaving!.odds).toBeGreaterThan(0.9);
    expect(leaving!.oneInTenH!).toBeGreaterThan(0);
    expect(leaving!.oneInTenH!).toBeLessThan(leaving!.halfH!);
    // From 7.52 at 0.17 dKH a day it takes three days to 7.
    expect(leaving!.halfH! / 24).toBeCloseTo(3, 0);
  });

  it('asks for the next test before one in ten has left the band', () => {
    const { nextTest, leaving } = answer;
    expect(nextTest.alreadyKnown).toBe(false);
    expect(nextTest.reason).toBe('leaving');
    expect(nextTest.inDays).toBeCloseTo(leaving!.oneInTenH! / 24, 1);
  });

  it('asks for the next test just when it makes the consumption known well enough', () => {
    const wide = { ...plan, limits: { ...plan.limits, alkalinityLowDkh: 2 } };
    const told = (readings: readonly Reading[], within: number) => {
      const found = answerLog(wide, readings, within);
      if ('why' in found) throw new Error(found.why);
      return found;
    };
    const within = 0.062;
    const { nextTest, fan, fit } = told(log, within);
    expect(nextTest.reason).toBe('known');
    const seAfter = (inDays: number) => {
      const hour = Math.round(inDays * 24);
      const at = localTimeOf(Math.floor(START_H) + Math.floor(fit.endH) + hour);
      const tested = [...log, { at, alkalinityDkh: Number(fan.ahead.dkh[hour]!.toFixed(2)) }];
      return told(tested, within).useNow.standardErrorDkhPerDay;
    };
    expect(2 * seAfter(nextTest.inDays)).toBeLessThan(within * 1.15);
    expect(2 * seAfter(nextTest.inDays - 1)).toBeGreaterThan(within * 0.9);
  });

  it('goes on with what the log shows being poured in, and says so', () => {
    const evening = (day: number) => localTimeOf(START_H + day * 24 + 9.5);
    const byHand = [8.4, 8.4, 8.5, 8.4, 8.4, 8.5, 8.4].flatMap((alkalinityDkh, day): Reading[] => [
      { at: localTimeOf(START_H + day * 24), alkalinityDkh },
      { at: evening(day), additive: 'sodiumBicarbonate', grams: 9 },
    ]);
    const found = answered(byHand);
    expect(found.habits.doses).toMatchObject([{ gramsEach: 9, everyDays: 1 }]);
    expect(habitSentence(found)).toContain('9 g sodium bicarbonate a day');
    // 9 g raise 300 L by 1.00 dKH (2.996 g for 100 L, additives.csv): without them a week takes 7.
    const dayMean = (day: number) => mean(found.fan.ahead.dkh.slice(day * 24, day * 24 + 24))!;
    expect(Math.abs(dayMean(7) - dayMean(0))).toBeLessThan(0.4);
    const stopped = [
      ...byHand.slice(0, -6),
      ...[4, 5, 6, 7].map((day) => ({
        at: localTimeOf(START_H + day * 24),
        alkalinityDkh: 8.4 - (day - 4),
      })),
    ];
    expect(answered(stopped).habits.doses).toEqual([]);
    // A turn stands in for what was poured until then; what is poured after it goes on.
    const turned = (day: number) =>
      answerLog(plan, byHand, 0.1, usualOptions, [{ until: evening(day), plan }]) as LogAnswer;
    expect(turned(6).habits.doses).toEqual([]);
    expect(turned(2).habits.doses).toMatchObject([{ gramsEach: 9, everyDays: 1 }]);
  });

  it('names in words what the log cannot tell', () => {
    const notes = notesOf(answer.fit, plan).join(' ');
    expect(notes).toContain('Growth cannot be told apart');
    expect(notes).toContain('Gas exchange is not known from this log');
    expect(notesOf(answered(log.slice(0, 3)).fit, plan).join(' ')).toContain(
      'Only 3 alkalinity readings',
    );
  });
});

it('a tank on limewater is as likely before a gulp as after it: the forecast begins half way', () => {
  const small = scenarioOf({
    days: 4,
    tank: { volumeL: 40, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 0.3 },
    evaporation: { litresPerDay: 0.6 },
    topOff: { reservoirL: 10, additive: 'calciumHydroxide', gramsPerL: 0.3, deadBandL: 0.5 },
  });
  // What a gulp brings, by hand: 0.5 L of 0.3 g/L (8.1 meq/L) in 40 L, at 0.357 meq/L a dKH.
  const gulpDkh = (0.5 * 8.1) / 40 / 0.357;
  const fromDay = (dkh: Iterable<number>) => mean([...dkh].slice(24))!;
  const begun = fromDay(hourlyDkh(small, [], usualOptions));
  const begunFull = fromDay(readColumn(run(small).trace, 'alkalinity_dkh'));
  // Half of it, less what the water that it replaces had thickened the tank by.
  const half = (gulpDkh - (8.5 * 0.5) / 40) / 2;
  // What lives there answers to the difference and takes some of it.
  expect(begun - begunFull).toBeGreaterThan(0.5 * half);
  expect(begun - begunFull).toBeLessThan(1.1 * half);
});
