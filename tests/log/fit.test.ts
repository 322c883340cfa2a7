import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { gramsForDkh } from '../../shared/recipe/gramsFor';
import { twoPart } from '../../shared/recipe/twoPart';
import { usePerDay } from '../../shared/verdict/measures';
import { run } from '../../workers/engine/run';
import { notesOf } from '../../src/say/fit/notes';
import { unansweredSentence } from '../../src/say/fit/unanswered';
import { asItHappened } from '../../workers/studies/fit/asItHappened';
import { fitLog, type Fit } from '../../workers/studies/fit/fit';
import { tooLittle } from '../../workers/studies/fit/tooLittle';
import { Model } from '../../workers/studies/fit/model';

const START_H = 20_454 * 24 + 10;
const plan = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
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
/** Consumption as the log ends, and its standard error. */
const use = (log: readonly Reading[]) => {
  const { now } = fitLog(plan, log);
  return { value: now.useDkhPerDay, standardError: Math.sqrt(now.covariance[1]![1]!) };
};

it('every number of a log says which of its readings it is from, in whatever order they came', () => {
  const long = daily(Array.from({ length: 501 }, (_, i) => 8 + 0.001 * i)).toReversed();
  for (const log of [daily(SIX).toReversed(), long]) {
    const { observations } = asItHappened(plan, log);
    for (const { readings, value } of observations) {
      const mean = readings.reduce((sum, i) => sum + log[i]!.alkalinityDkh!, 0) / readings.length;
      expect(mean).toBeCloseTo(value, 12);
    }
    expect(observations.flatMap(({ readings }) => readings)).toHaveLength(log.length);
  }
});

describe('the fit of a log', () => {
  it('tells the consumption of six readings', () => {
    const { value, standardError } = use(daily(SIX));
    // The line falls by 0.18 a day, Σ(t − t̄)(y − ȳ)/Σ(t − t̄)² = −3.15/17.5, worked by hand.
    expect(value).toBeGreaterThan(0.15);
    expect(value).toBeLessThan(0.21);
    // σ/√Σ(t − t̄)² = 0.15/√17.5 = 0.036, and so much more as growth and wandering may be.
    expect(standardError).toBeGreaterThan(0.03);
    expect(standardError).toBeLessThan(0.06);
  });

  it('is not moved by a kit that reads too high, and is stretched by one that reads too much', () => {
    const fair = use(daily(SIX)).value;
    expect(use(daily(SIX.map((dkh) => dkh + 0.3))).value).toBeCloseTo(fair, 2);
    const stretched = use(daily(SIX.map((dkh) => dkh * 1.1))).value;
    expect(stretched / fair).toBeCloseTo(1.1, 1);
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

  it('shows an outlier, keeps it and is hardly moved by it', () => {
    const fair = [8.4, 8.3, 8.2, 8.1, 8, 7.9, 7.8, 7.7, 7.6, 7.5];
    const { points } = fitLog(plan, daily(fair.with(4, 9.4)));
    expect(points).toHaveLength(10);
    expect(
      points.filter(({ standardised }) => Math.abs(standardised) > 3).map(({ value }) => value),
    ).toEqual([9.4]);
    for (const wild of [0, 4, 9]) {
      expect(use(daily(fair.with(wild, 9.9))).value).toBeCloseTo(use(daily(fair)).value, 1);
    }
  });

  it('lands where noiseless tests say, from the untouched default and from far away', () => {
    for (const [truth, pumped] of [
      [0.4, 0.4],
      [2.5, 2.5],
      [0.15, 0],
    ] as const) {
      const dosers = twoPart(
        'sodiumCarbonate',
        gramsForDkh('sodiumCarbonate', pumped, 300) * 10,
        plan,
      );
      const dosed = { ...plan, dosers };
      const tank = { ...dosed, corals: { ...plan.corals, useDkhPerDay: truth } };
      const blank = daily(Array.from({ length: 30 }, () => 8));
      const water = new Model(asItHappened(tank, blank), []).course([]);
      const log = daily(water.water.map((dkh) => Number(dkh.toFixed(3))));
      const { now, converged } = fitLog(dosed, log);
      expect(converged).toBe(true);
      // The same tank run for itself, and its ledger read over the last two days.
      const { scenario, endH } = asItHappened(tank, blank);
      const { trace } = run({ ...scenario, days: endH / 24 });
      expect(now.useDkhPerDay).toBeCloseTo(usePerDay(trace, endH - 48, endH), 2);
    }
  });

  it('says from when on a pump that stands makes the readings fall', () => {
    const log = daily([8.4, 8.5, 8.4, 8.4, 8.5, 8.4, 8.4, 8.4, 7.6, 6.9, 6.1, 5.4]);
    const fit = fitLog(plan, log);
    expect(fit.jump!.byDkhPerDay).toBeGreaterThan(0.4);
    expect(fit.jump!.atH / 24).toBeGreaterThan(6);
    expect(notesOf(fit, plan).join(' ')).toContain('is the pump running');
    expect(fitLog(plan, daily(SIX)).jump).toBeUndefined();
  });

  it('says how far numbers that no reading checks would move the use', () => {
    const dosed = { ...plan, dosers: twoPart('sodiumCarbonate', 400, plan) };
    const { now } = fitLog(dosed, daily([8.4, 8.4, 8.5, 8.4, 8.4, 8.5, 8.4]));
    const volume = now.doubts.find(({ id }) => id === 'volume')!;
    // As much alkalinity in a tenth more water raises it by a tenth less: 1 − 1/1.1 of the use.
    expect(-volume.useDkhPerDay / now.useDkhPerDay).toBeCloseTo(1 - 1 / 1.1, 1);
    expect(fitLog(plan, daily(SIX)).now.doubts).toEqual([]);
  });

  it('finds gas exchange and photosynthesis from pH by day and night', () => {
    // A fed tank: what is breathed out has to leave by the surface, and shows in pH.
    const fed = { ...plan, food: { ...plan.food, gramsPerDay: 1 } };
    const truth = {
      ...fed,
      corals: { ...plan.corals, useDkhPerDay: 0.18 },
      gas: { ...plan.gas, kLaPerH: 2.4 },
      photosynthesis: { ...plan.photosynthesis, grossMmolPerLPerDay: 0.9 },
    };
    const hours = [8.5, 18.5, 32.5, 42.5, 56.5, 66.5, 80.5, 90.5];
    const at = (h: number) => localTimeOf(START_H - 10 + h);
    const blank = [...hours.map((h): Reading => ({ at: at(h), phNbs: 8 })), ...daily(SIX)];
    const { water } = new Model(asItHappened(truth, blank), []).course([]);
    const kinds = asItHappened(truth, blank).observations.map(({ kind }) => kind);
    const ph = [...water].filter((_, i) => kinds[i] === 'ph');
    const log = blank.map((reading, i) => (i < 8 ? { ...reading, phNbs: ph[i]! } : reading));
    const fit = fitLog(fed, log);
    const lnKLa = estimate(fit, 'lnKLa');
    expect(Math.abs(lnKLa.value - Math.log(2.4))).toBeLessThan(2 * lnKLa.standardError);
    // From the plan's 1.2 towards the truth, and surer than before.
    expect(Math.exp(lnKLa.value)).toBeGreaterThan(1.3);
    expect(lnKLa.standardError).toBeLessThan(0.95 * Math.LN2);
    expect(estimate(fit, 'gross').value).toBeCloseTo(0.9, 0);
    // A probe that reads 0.15 too high: its offset is a number of its own, and kLa hardly moves.
    const high = log.map((one) => (one.phNbs ? { ...one, phNbs: one.phNbs + 0.15 } : one));
    const { value, standardError } = estimate(fitLog(plan, high), 'lnKLa');
    expect(Math.abs(value - Math.log(2.4))).toBeLessThan(2 * standardError);
    expect(estimate(fitLog(plan, high), 'phOffset').value).toBeGreaterThan(0.04);
  });

  it('says when there is too little to fit', () => {
    const why = (log: readonly Reading[]) => unansweredSentence(tooLittle(log)!);
    expect(why([])).toMatch(/^No alkalinity reading so far/);
    expect(why(daily([8]))).toMatch(/^One alkalinity reading so far/);
    const sameDay = [...daily([8]), { at: localTimeOf(START_H + 3), alkalinityDkh: 7.9 }];
    expect(why(sameDay)).toMatch(/within 3 hours/);
    expect(tooLittle(daily([8, 7.9]))).toBeUndefined();
  });
});
