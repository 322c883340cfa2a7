import type { Scenario } from '../../../shared/scenario/schema';
import { plannedEvents } from '../../engine/plannedEvents';

import type { SimulationOptions } from '../../engine/simulation';
import type { Fit } from '../fit/fit';
import { varianceOf } from '../fit/leastSquares';
import { sawtoothDkh } from '../fit/sawtooth';
import type { Earlier } from '../fit/turnedAt';
import type { Restless } from '../fit/wander';
import { hourlyDkh } from './hourly';

/** The fitted tank, past and ahead. */
export interface Fan {
  /** Hours since the start of the log. */
  readonly timesH: readonly number[];
  readonly dkh: readonly number[];
  /** One standard error of the water, without the noise of a test, dKH. */
  readonly spreadDkh: readonly number[];
  /** When something will be poured in or changed at once: the water jumps there. */
  readonly suddenH: readonly number[];
  readonly ahead: Ahead;
}

/** What comes after the log, and how it moves with what is not quite known. */
export interface Ahead {
  /** Every hour since the end of the log. */
  readonly timesH: readonly number[];
  readonly dkh: readonly number[];
  readonly spreadDkh: readonly number[];
  /** Change of dKH for one unit of level, use and growth, at each time. */
  readonly slopes: readonly (readonly number[])[];
  /** How far it may be off, one σ, because growth may answer to saturation by the other law, dKH. */
  readonly byLawDkh: readonly number[];
  readonly restless: Restless;
  readonly suddenH: readonly number[];
}

/** What light, food and gas exchange leave open from day to day: calibrated on the twins. */
const UNTOLD_DKH = 0.06;
/** No log tells by which law growth answers to saturation; σ in shares of how far they lead apart: calibrated likewise. */
const LAW_SHARE = 0.75;
const ASIDE = { dkh: 0.1, use: 0.05, growth: 0.1 };

/** What is taken today, answering to where the water goes by the other of the two laws. */
const underOtherLaw = ({ corals, start, ...now }: Scenario, useDkhPerDay: number): Scenario => ({
  ...now,
  start: { ...start, omegaReference: 0 },
  corals: {
    ...corals,
    useDkhPerDay: Math.max(0, useDkhPerDay),
    omegaLaw: corals.omegaLaw === 'gentle' ? 'proportional' : 'gentle',
  },
});

/**
 * The fan comes from the covariance of level, use and growth through the engine, to first order:
 * one run for the tank as it stands and one for each step aside. What wanders on adds to it as a
 * step of the same day's level or use would. tests/log/forecast holds it against whole draws. `still`
 * is what went on being dosed after the log's end, until the plan in force took over.
 */
export function aheadOf(
  now: Scenario,
  fit: Fit,
  options: SimulationOptions,
  still: readonly Earlier[] = [],
): Ahead {
  const hourly = (scenario: Scenario) => hourlyDkh(scenario, still, options);
  const { tank, corals } = now;
  const dkh = hourly(now);
  const [level, use, growth] = [
    hourly({ ...now, tank: { ...tank, alkalinityDkh: tank.alkalinityDkh + ASIDE.dkh } }),
    hourly({ ...now, corals: { ...corals, useDkhPerDay: corals.useDkhPerDay + ASIDE.use } }),
    hourly({
      ...now,
      corals: { ...corals, growthPercentPerDay: corals.growthPercentPerDay + ASIDE.growth },
    }),
  ];
  const otherLaw = hourly(underOtherLaw(now, fit.now.useDkhPerDay));
  // A tank that leaves the range of its chemistry stops early, in whichever run.
  const rows = Math.min(...[dkh, level, use, growth, otherLaw].map(({ length }) => length));
  const slopes = Array.from({ length: rows }, (_, k) => [
    (level[k]! - dkh[k]!) / ASIDE.dkh,
    (use[k]! - dkh[k]!) / ASIDE.use,
    (growth[k]! - dkh[k]!) / ASIDE.growth,
  ]);
  const byLawDkh = slopes.map((_, k) => LAW_SHARE * (otherLaw[k]! - dkh[k]!));
  const { restless, covariance } = fit.now;
  let wandered = sawtoothDkh(now) ** 2 + UNTOLD_DKH ** 2;
  const spreadDkh = slopes.map((row, k) => {
    const [byLevel, byUse] = slopes[k]! as [number, number, number];
    const perDay = (byLevel * restless.levelDkh) ** 2 + (byUse * restless.useDkhPerDay) ** 2;
    if (k > 0) wandered += perDay / 24;
    return Math.sqrt(varianceOf(row, covariance) + wandered + byLawDkh[k]! ** 2);
  });
  const timesH = slopes.map((_, hour) => hour);
  const suddenH = plannedEvents(now).map(({ timeH }) => timeH);
  return { timesH, dkh: dkh.slice(0, rows), spreadDkh, slopes, byLawDkh, restless, suddenH };
}

/** The past as fitted and the future as it follows, on one time axis. */
export function fanOf(fit: Fit, ahead: Ahead): Fan {
  const fromH = Math.floor(fit.endH);
  const past = fit.past.filter(({ timeH }) => timeH < fromH);
  return {
    timesH: [...past.map(({ timeH }) => timeH), ...ahead.timesH.map((timeH) => fromH + timeH)],
    dkh: [...past.map(({ dkh }) => dkh), ...ahead.dkh],
    spreadDkh: [...past.map(({ spreadDkh }) => spreadDkh), ...ahead.spreadDkh],
    suddenH: ahead.suddenH.map((timeH) => fromH + timeH),
    ahead,
  };
}
