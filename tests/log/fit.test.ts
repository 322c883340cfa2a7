import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { asItHappened } from '../../workers/studies/fit/asItHappened';
import { fitLog, tooLittle, type Fit } from '../../workers/studies/fit/fit';
import { leastSquares } from '../../workers/studies/fit/leastSquares';
import { Model } from '../../workers/studies/fit/model';
import { patience } from '../laws/size';
import { twins } from './twins';

const START_H = 20_454 * 24 + 10;
const plan = scenarioOf({
  type: 'paper-reef/scenario',
  version: 3,
  title: 'the wet lab of the lighthouse at Sorrel Point',
  days: 30,
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
});

const daily = (dkh: readonly number[], more: Partial<Reading> = {}): Reading[] =>
  dkh.map((alkalinityDkh, day) => ({
    at: localTimeOf(START_H + day * 24),
    alkalinityDkh,
    ...more,
  }));
const SIX = [8.4, 8.1, 8.2, 7.8, 7.7, 7.5];
const estimate = (fit: Fit, id: string) => fit.estimates.find((e) => e.id === id)!;
const use = (log: readonly Reading[]) => estimate(fitLog(plan, log), 'use');

describe('the fit of a log', () => {
  it('solves a straight line as the textbook does, covariance included', () => {
    const t = [0, 1, 2.5, 4, 7];
    const y = [8.4, 8.2, 8.3, 7.7, 7.1];
    const sigma = 0.15;
    const { values, covariance } = leastSquares({
      targets: y.map((value) => value / sigma),
      predict: ([a, b]) => t.map((time) => (a! + b! * time) / sigma),
      initial: [1, 1],
      ...{ min: [-50, -50], max: [50, 50], step: [0.1, 0.1] },
    });
    const mean = t.reduce((sum, time) => sum + time, 0) / t.length;
    const spread = t.reduce((sum, time) => sum + (time - mean) ** 2, 0);
    const slope = t.reduce((sum, time, i) => sum + (time - mean) * y[i]!, 0) / spread;
    expect(values[1]).toBeCloseTo(slope, 5);
    expect(Math.sqrt(covariance[1]![1]!)).toBeCloseTo(sigma / Math.sqrt(spread), 6);
  });

  it('tells the consumption of six readings, and how sure that is', () => {
    const { value, standardError } = use(daily(SIX));
    expect(value).toBeGreaterThan(0.13);
    expect(value).toBeLessThan(0.2);
    // σ/√Σ(t − t̄)² = 0.15/√17.5, worked by hand; growth and saturation add a little.
    expect(standardError).toBeGreaterThan(0.0358);
    expect(standardError).toBeLessThan(0.042);
  });

  it('is not moved by a kit that reads too high, and is stretched by one that reads too much', () => {
    const fair = use(daily(SIX)).value;
    expect(use(daily(SIX.map((dkh) => dkh + 0.3))).value).toBeCloseTo(fair, 2);
    const stretched = use(daily(SIX.map((dkh) => dkh * 1.1))).value;
    expect((stretched + 0.02) / (fair + 0.02)).toBeCloseTo(1.1, 1);
  });

  it('takes doses and water changes as they happened', () => {
    const dosed = daily(SIX.map((dkh, day) => dkh + (day > 2 ? 0.5 : 0)));
    // 0.5 dKH in 300 L: 2.996 g of bicarbonate raise 100 L by 1 dKH (additives.csv).
    const at = localTimeOf(START_H + 2 * 24 + 1);
    const log = [...dosed, { at, additive: 'sodiumBicarbonate', grams: 4.494 } as const];
    expect(use(log).value).toBeCloseTo(use(daily(SIX)).value, 2);
  });

  it('reads a step of a new reagent lot as an offset, not as consumption', () => {
    const flat = daily([8.4, 8.35, 8.3, 8.25, 8.2, 8.15], { lot: 'A' });
    const stepped = flat.map((reading, i) =>
      i < 3 ? reading : { ...reading, alkalinityDkh: reading.alkalinityDkh! - 0.4, lot: 'B' },
    );
    const unmarked = stepped.map((reading) => ({ ...reading, lot: 'A' }));
    const offset = estimate(fitLog(plan, stepped), 'lot 1');
    expect(offset.value).toBeLessThan(-0.1);
    expect(use(stepped).value).toBeLessThan(use(unmarked).value - 0.03);
  });

  it('shows an outlier and keeps it', () => {
    const spoiled = daily([8.4, 8.3, 8.2, 8.1, 9.4, 7.9, 7.8, 7.7, 7.6, 7.5]);
    const { points, widened } = fitLog(plan, spoiled);
    expect(points).toHaveLength(10);
    expect(
      points.filter(({ standardised }) => Math.abs(standardised) > 3).map(({ value }) => value),
    ).toEqual([9.4]);
    expect(widened).toBeGreaterThan(1.5);
  });

  it('finds gas exchange and photosynthesis from pH by day and night', () => {
    const truth = {
      ...plan,
      corals: { ...plan.corals, useDkhPerDay: 0.18 },
      gas: { ...plan.gas, kLaPerH: 2.4 },
      photosynthesis: { ...plan.photosynthesis, grossMmolPerLPerDay: 0.9 },
    };
    const hours = [8.5, 18.5, 32.5, 42.5, 56.5, 66.5, 80.5, 90.5];
    const at = (h: number) => localTimeOf(START_H - 10 + h);
    const blank = [...hours.map((h): Reading => ({ at: at(h), phNbs: 8 })), ...daily(SIX)];
    const water = new Model(asItHappened(truth, blank), []).readings([]);
    const kinds = asItHappened(truth, blank).observations.map(({ kind }) => kind);
    const ph = [...water].filter((_, i) => kinds[i] === 'ph');
    const log = blank.map((reading, i) => (i < 8 ? { ...reading, phNbs: ph[i]! } : reading));
    const fit = fitLog(plan, log);
    expect(Math.exp(estimate(fit, 'lnKLa').value)).toBeCloseTo(2.4, 0);
    expect(estimate(fit, 'gross').value).toBeCloseTo(0.9, 0);
    expect(estimate(fit, 'lnKLa').standardError).toBeLessThan(Math.LN2);
  });

  it('says when there is too little to fit', () => {
    expect(tooLittle([])).toMatch(/^No alkalinity reading so far/);
    expect(tooLittle(daily([8]))).toMatch(/^One alkalinity reading so far/);
    const sameDay = [...daily([8]), { at: localTimeOf(START_H + 3), alkalinityDkh: 7.9 }];
    expect(tooLittle(sameDay)).toMatch(/within 3 hours/);
    expect(tooLittle(daily([8, 7.9]))).toBeUndefined();
  });

  it(
    'holds the true consumption in about 95 of 100 twins, nearer than a straight line',
    { timeout: patience * 3 },
    () => {
      const { coverage, medianErrorDkhPerDay, lineMedianErrorDkhPerDay } = twins(40, false);
      // 95 % ± three standard errors of 40 draws.
      expect(coverage).toBeGreaterThanOrEqual(0.85);
      expect(medianErrorDkhPerDay).toBeLessThan(lineMedianErrorDkhPerDay);
    },
  );
});
