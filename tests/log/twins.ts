import { median } from 'd3-array';
import { randomLcg, randomNormal } from 'd3-random';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { straightLine } from '../../shared/log/slope';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { meqPerLPerDkh } from '../../shared/seawater/alkalinity';
import { alkalinityMeqPerG } from '../../shared/species/additives';
import { asItHappened } from '../../workers/studies/fit/asItHappened';
import { fitLog } from '../../workers/studies/fit/fit';
import { Model } from '../../workers/studies/fit/model';

/** The twins of every run, the same on every machine. */
const SEED = 0.20261125;
export const NOISE_DKH = 0.15;
const START_H = 20_454 * 24;

export interface Twins {
  readonly count: number;
  /** Share of twins whose stated 95 % interval of consumption holds the true one. */
  readonly coverage: number;
  readonly medianErrorDkhPerDay: number;
  /** The same of a straight line through the readings, with all that was dosed added back. */
  readonly lineMedianErrorDkhPerDay: number;
}

type Draw = (low: number, high: number) => number;

interface Tank {
  readonly use: number;
  readonly growth: number;
  readonly start: number;
  readonly volumeL: number;
  readonly dosedDkhPerDay: number;
  readonly kLa: number;
}

/** A tank with a two-part pump that nearly keeps up. */
function plan(tank: Tank, corals: object, kLaPerH: number): Scenario {
  const { volumeL, dosedDkhPerDay, start } = tank;
  const sodaG = (dosedDkhPerDay * meqPerLPerDkh * volumeL) / alkalinityMeqPerG('sodiumCarbonate');
  const pump = (name: string, additive: string, gramsPerL: number) => ({
    name,
    recipe: [{ additive, gramsPerL }],
    mlPerDay: sodaG * 10,
    stockL: 500,
  });
  return scenarioOf({
    type: 'paper-reef/scenario',
    version: 3,
    title: 'a twin in the drawing office of Ombrel Pier',
    days: 20,
    tank: { volumeL, alkalinityDkh: start },
    corals,
    gas: { kLaPerH },
    topOff: { reservoirL: 20, refillEveryDays: 2 },
    evaporation: { litresPerDay: volumeL * 0.01 },
    dosers: [pump('one', 'sodiumCarbonate', 100), pump('two', 'calciumChlorideDihydrate', 139)],
  });
}

/** What a keeper did and when they tested, at hours that suited them. */
function whatWasDone(draw: Draw, { volumeL }: Tank): Reading[] {
  const days = draw(10, 14);
  const log: Reading[] = [];
  for (let day = 0; day <= days; day += draw(0.6, 1.6)) {
    const at = localTimeOf(START_H + Math.floor(day) * 24 + draw(8, 22));
    if (log.at(-1)?.at.slice(0, 10) !== at.slice(0, 10)) log.push({ at, alkalinityDkh: 8 });
  }
  const between = (reading: Reading): string => reading.at.replace(/:\d\d$/, ':59');
  const some = () => log[Math.floor(draw(1, log.length - 1))]!;
  const grams = () =>
    (draw(0.2, 0.6) * meqPerLPerDkh * volumeL) / alkalinityMeqPerG('sodiumBicarbonate');
  return [
    ...log,
    { at: between(some()), waterChangePercent: Math.round(draw(8, 20)) },
    { at: between(some()), additive: 'sodiumBicarbonate', grams: grams() },
    { at: between(some()), additive: 'sodiumBicarbonate', grams: grams() },
  ];
}

/** The straight line of a careful keeper: everything dosed is added back, evenly. */
function byLine(log: readonly Reading[], { dosedDkhPerDay, volumeL }: Tank): number {
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const days = tested.map(({ at }) => (Date.parse(`${at}Z`) / 3_600_000 - START_H) / 24);
  const length = Math.max(...days) - Math.min(...days);
  const poured = log.reduce((sum, { grams = 0 }) => sum + grams, 0);
  const pouredDkh = (poured * alkalinityMeqPerG('sodiumBicarbonate')) / volumeL / meqPerLPerDkh;
  const line = straightLine(
    days,
    tested.map(({ alkalinityDkh }) => alkalinityDkh!),
    NOISE_DKH,
  );
  return dosedDkhPerDay + pouredDkh / length - line.slopeDkhPerDay;
}

/** One tank that runs in truth, its log with noise, and what the fit makes of it. */
function twin(draw: Draw, normal: () => number, unassumed: boolean) {
  const use = draw(0.3, 2.5);
  const tank: Tank = {
    use,
    // Corals that stand still to corals that double in three months (common practice).
    growth: draw(0, 0.8),
    start: draw(7.5, 10),
    volumeL: draw(60, 900),
    dosedDkhPerDay: Math.max(0, use - draw(-0.05, 0.25)),
    kLa: unassumed ? Math.exp(draw(Math.log(0.5), Math.log(5))) : 1.2,
  };
  const law = unassumed ? 'proportional' : 'gentle';
  const corals = { useDkhPerDay: use, growthPercentPerDay: tank.growth, omegaLaw: law };
  const done = whatWasDone(draw, tank);
  const happened = asItHappened(plan(tank, corals, tank.kLa), done);
  const truth = {
    ...happened.scenario,
    tank: { ...happened.scenario.tank, alkalinityDkh: tank.start },
  };
  const water = new Model({ ...happened, scenario: truth }, []).readings([]);
  const times = new Map(happened.observations.map(({ timeH }, i) => [timeH, water[i]!]));
  const log = done.map((reading): Reading => {
    if (reading.alkalinityDkh === undefined) return reading;
    const timeH = (Date.parse(`${reading.at}Z`) - Date.parse(`${happened.startAt}Z`)) / 3_600_000;
    const read = [...times].find(([t]) => Math.abs(t - timeH) < 1e-6)![1] + NOISE_DKH * normal();
    return { ...reading, alkalinityDkh: Math.round(read * 100) / 100, accuracyDkh: NOISE_DKH };
  });
  const assumed = plan(tank, { useDkhPerDay: 0.8, growthPercentPerDay: 0.2 }, 1.2);
  const estimate = fitLog(assumed, log).estimates.find(({ id }) => id === 'use')!;
  return {
    held: Math.abs(estimate.value - use) <= 1.96 * estimate.standardError,
    error: Math.abs(estimate.value - use),
    lineError: Math.abs(byLine(log, tank) - use),
  };
}

/**
 * Logs of tanks whose consumption is known, since the engine itself made them: 10 to 14 days,
 * irregular hours, a water change and two doses between. `unassumed` draws a gas exchange and an
 * answer to saturation that the fit does not assume.
 */
export function twins(count: number, unassumed: boolean): Twins {
  const source = randomLcg(SEED);
  const draw: Draw = (low, high) => low + (high - low) * source();
  const normal = randomNormal.source(source)(0, 1);
  const all = Array.from({ length: count }, () => twin(draw, normal, unassumed));
  return {
    count,
    coverage: all.filter(({ held }) => held).length / count,
    medianErrorDkhPerDay: median(all, ({ error }) => error)!,
    lineMedianErrorDkhPerDay: median(all, ({ lineError }) => lineError)!,
  };
}
