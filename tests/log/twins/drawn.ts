import { randomNormal } from 'd3-random';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { localTimeOf } from '../../../shared/log/localTime';
import { straightLine } from '../../../shared/log/slope';
import { scenarioOf } from '../../../shared/scenario/write';
import { asItHappened } from '../../../workers/studies/fit/asItHappened';
import { beforesOf } from '../../../workers/studies/fit/before';
import { parametersOf } from '../../../workers/studies/fit/parameters';
import { jumps, usualUseOf, walks, type Kind } from '../../../workers/studies/fit/restlessness';
import { LN_SPREAD_SIGMA, robustly } from '../../../workers/studies/fit/robust';
import { firstWeights, FREEDOM, NARROWER } from '../../../workers/studies/fit/studentT';
import { sumOf } from '../../../workers/studies/fit/slopes';
import type { Restless } from '../../../workers/studies/fit/wander';

/** How far the fit is from what a tank truly takes, what it thinks of that, and a line beside it, dKH/day. */
export interface Found {
  readonly error: number;
  /** One σ, by the fit. */
  readonly sigma: number;
  readonly lineError: number;
}

const SIGMA_DKH = 0.15;
/** A walk in steps of so many hours is one that nobody can tell from a walk without steps. */
const STEP_H = 3;

const plan = scenarioOf({ tank: { volumeL: 200, alkalinityDkh: 8.4 } });

/** A tank of which all that the fit does not know is drawn from what it thinks possible. */
export const drawn = (number: number, seed: number): Found => tankOf(number, seed, false);

/** The same with use and level at rest, and readings that stray as a normal does. */
export const resting = (number: number, seed: number): Found => tankOf(number, seed, true);

/** One log of a tank in closed form: dKH = start − use·t − use·growth·t²/2, all that is drawn is drawn from the priors. */
function tankOf(number: number, seed: number, rests: boolean): Found {
  const generator = xoroshiro128plus(Math.imul(number + 1, 0x9e3779b1) ^ seed);
  for (let i = 0; i < 8; i++) generator.next();
  const chance = () => uniformFloat64(generator);
  const normal = randomNormal.source(chance)(0, 1);
  const pick = <T>(all: readonly T[], oddsOf: (one: T) => number): T => {
    let left = chance() * all.reduce((sum, one) => sum + oddsOf(one), 0);
    return all.find((one) => (left -= oddsOf(one)) < 0) ?? all[0]!;
  };

  const days = 10 + 50 * chance();
  const count = Math.max(10, Math.round(days * (0.4 + 0.6 * chance())));
  const useDkhPerDay = 0.2 * 20 ** chance();
  const timesH = Array.from({ length: count }, (_, i) => (24 * days * i) / (count - 1));
  const endH = timesH.at(-1)!;
  const log = timesH.map((timeH) => ({ at: localTimeOf(timeH), alkalinityDkh: 8.4 }));
  // Use, growth and start, in that order.
  const parameters = parametersOf(asItHappened(plan, log));
  // The run is taken at no growth: what is known of growth is known from there.
  const priors = beforesOf(parameters, [useDkhPerDay, 0, 8.4]);
  const slopesAt = (timeH: number) => {
    const day = timeH / 24;
    return [-day, (-useDkhPerDay * day ** 2) / 200, 1];
  };
  const ofUse = [1, (useDkhPerDay * endH) / 2400, 0];
  const usualUse = usualUseOf(useDkhPerDay);
  const still = timesH.map((timeH) => ({
    ...{ timeH, slopes: slopesAt(timeH), wanders: true, variance: SIGMA_DKH ** 2, left: 0 },
  }));

  const grows = pick(priors, ({ odds }) => odds);
  const truth = [0, grows.mean[1]! + grows.sigma[1]! * normal(), 0];
  const spread = Math.exp(LN_SPREAD_SIGMA * normal());
  const kinds: Kind[] = [...walks(usualUse), ...jumps(still, usualUse)];
  const restless: Restless = rests
    ? { useDkhPerDay: 0, levelDkh: 0 }
    : pick(kinds, ({ logPrior }) => Math.exp(logPrior));
  const walk = walkOf(restless, normal);
  const noise = () => {
    const square = Array.from({ length: FREEDOM }, () => normal() ** 2).reduce((a, b) => a + b);
    return normal() / Math.sqrt((square / FREEDOM) * NARROWER);
  };
  const rows = still.map((row) => {
    const { level } = walk(row.timeH);
    return {
      ...row,
      left: sumOf(row.slopes, truth) + level + SIGMA_DKH * spread * (rests ? normal() : noise()),
    };
  });
  const first = firstWeights(rows.map(({ left }) => left / SIGMA_DKH / 20));
  const { mean, covariance } = robustly({ rows, priors, endH, usualUse, mayLeap: true }, first);
  const all = [...ofUse, 1, 0];
  const variance = sumOf(
    all,
    covariance.map((row) => sumOf(row, all)),
  );
  const trueUse = sumOf(ofUse, truth) + walk(endH).use;
  const { slopeDkhPerDay } = straightLine(
    timesH.map((timeH) => timeH / 24),
    rows.map(({ left }) => left),
    SIGMA_DKH,
  );
  return {
    error: sumOf(all, mean) - trueUse,
    sigma: Math.sqrt(variance),
    lineError: -slopeDkhPerDay - trueUse,
  };
}

/** Use and level as they wander, asked in order of time. */
function walkOf({ useDkhPerDay, levelDkh, jump }: Restless, normal: () => number) {
  let [timeH, use, level] = [0, 0, 0];
  return (untilH: number) => {
    while (timeH < untilH) {
      const days = Math.min(STEP_H, untilH - timeH) / 24;
      if (jump && jump.atH >= timeH && jump.atH < timeH + days * 24) {
        use += jump.useDkhPerDay * normal();
        level += jump.levelDkh * normal();
      }
      const more = useDkhPerDay * Math.sqrt(days) * normal();
      level -= (use + more / 2) * days;
      use += more;
      level += levelDkh * Math.sqrt(days) * normal();
      timeH = Math.min(untilH, timeH + STEP_H);
    }
    return { use, level };
  };
}
