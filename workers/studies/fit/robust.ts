import type { Before } from './before';
import { jumpOf, type Jump } from './jump';
import { leapsOf, type Leap } from './leap';
import { jumps, sudden, walks, type Kind } from './restlessness';
import { priceOf, weightOf } from './studentT';
import { likeliest, type Shared, type Tried } from './tried';
import { follow, type ReadingError, type Restless, type Row, type State } from './wander';

/** What is left of the readings about a fitted run, and how far the fitted numbers are known. */
export interface Leftover {
  readonly rows: readonly Row[];
  /** One or the other holds. */
  readonly priors: readonly Before[];
  readonly endH: number;
  /** What restlessness of the use is a share of, dKH/day. */
  readonly usualUse: number;
  /** Whether the water may have been moved at once by what the log does not have. */
  readonly mayLeap: boolean;
}

export interface Settlement extends State {
  /** Spread of the readings against their stated σ. */
  readonly spread: number;
  readonly restless: Restless;
  readonly errors: readonly ReadingError[];
  readonly jump: Jump | undefined;
  /** Where the water was moved at once, in order of time. */
  readonly leaps: readonly Leap[];
  /** What the mean would be of other leftovers, all else as it is. */
  readonly answerTo: (left: readonly number[]) => readonly number[];
}

const SPREADS = [0.5, 0.65, 0.8, 1, 1.25, 1.6, 2.1, 3];
export const LN_SPREAD_SIGMA = 0.35;
/** So many passes settle the weights. */
const PASSES = 5;
const PASSES_OF_A_JUMP = 3;
/** A spread and its neighbours: what settles the weights need not be tried with all. */
const near = (spread: number): number[] => {
  const at = SPREADS.indexOf(spread);
  return SPREADS.slice(Math.max(0, at - 1), at + 2);
};

const spreadPrior = (spread: number): number => -((Math.log(spread) / LN_SPREAD_SIGMA) ** 2) / 2;

/** E[e²]. */
const squareOf = ({ mean, variance }: ReadingError): number => mean ** 2 + variance;

function tried(
  { rows, priors, endH }: Leftover,
  kind: Kind,
  spreads: readonly number[],
  weights: readonly number[],
): Tried[] {
  const price = priceOf(weights);
  return spreads.flatMap((spread) => {
    const noisy = rows.map((row, i) => ({
      ...row,
      variance: (row.variance * spread ** 2) / weights[i]!,
    }));
    return priors.map((prior) => {
      const found = follow(noisy, prior, kind, endH);
      const before = kind.logPrior + spreadPrior(spread) + Math.log(prior.odds);
      return { kind, spread, prior, weights, found, logOdds: found.logEvidence + price + before };
    });
  });
}

/** What is a slip to a tank at rest may be plain to one that is not: each kind weighs for itself. */
function weighed(
  leftover: Leftover,
  kind: Kind,
  spreads: readonly number[],
  first: readonly number[],
  passes: number,
): Tried[] {
  let all = tried(leftover, kind, spreads, first);
  for (let pass = 1; pass < passes; pass++) {
    const { found, spread } = likeliest(all);
    const errors = found.errors();
    const weights = leftover.rows.map(({ variance }, i) =>
      weightOf(squareOf(errors[i]!) / (variance * spread ** 2)),
    );
    all = tried(leftover, kind, pass < passes - 1 ? near(spread) : spreads, weights);
  }
  return all;
}

function shared(all: readonly Tried[]): Shared[] {
  const most = likeliest(all).logOdds;
  const odds = all.map(({ logOdds }) => Math.exp(logOdds - most));
  const total = odds.reduce((a, b) => a + b);
  return all.map((one, i) => ({ ...one, share: odds[i]! / total }));
}

const mix = (all: readonly Shared[], of: (one: Shared) => number): number =>
  all.reduce((sum, one) => sum + one.share * of(one), 0);

/** Mean and covariance of the whole grid: what each guess finds, and how far they differ. */
function mixed(all: readonly Shared[]): State {
  const counted = all.filter(({ share }) => share > 1e-4);
  const mean = all[0]!.found.mean.map((_, i) => mix(counted, ({ found }) => found.mean[i]!));
  const covariance = mean.map((m, i) =>
    mean.map((n, k) =>
      mix(
        counted,
        ({ found }) => found.covariance[i]![k]! + (found.mean[i]! - m) * (found.mean[k]! - n),
      ),
    ),
  );
  return { mean, covariance };
}

/**
 * Weighs the readings by Student's t and lets use and level wander, averaged over a small grid of
 * how much. `first` are the weights by the plain fit.
 */
export function robustly(leftover: Leftover, first: readonly number[]): Settlement {
  const calm = walks(leftover.usualUse).flatMap((kind) =>
    weighed(leftover, kind, SPREADS, first, PASSES),
  );
  const { spread, weights: calmly } = likeliest(calm);
  const { rows, usualUse } = leftover;
  const jumped = jumps(rows, usualUse).flatMap((kind) =>
    weighed(leftover, kind, near(spread), calmly, PASSES_OF_A_JUMP),
  );
  // What a leap makes of the scatter has nothing to do with what rest makes of it.
  const leapt = (leftover.mayLeap ? sudden(rows) : []).flatMap((kind) =>
    weighed(leftover, kind, SPREADS, calmly, PASSES),
  );
  const rest = [...calm, ...jumped];
  const all = shared(rest);
  const { kind, prior, found, weights, ...best } = likeliest(all);
  return {
    ...mixed(all),
    errors: found.errors(),
    spread: Math.exp(mix(all, (one) => Math.log(one.spread))),
    restless: {
      useDkhPerDay: Math.sqrt(mix(all, (one) => one.kind.useDkhPerDay ** 2)),
      levelDkh: Math.sqrt(mix(all, (one) => one.kind.levelDkh ** 2)),
    },
    jump: jumpOf(all),
    // It is either sure, and fitted anew as something that was done, or it is none.
    leaps: leapsOf(shared([...rest, ...leapt]), rows),
    answerTo: (left) => {
      const rows = leftover.rows.map((row, i) => ({ ...row, left: left[i]! }));
      const priors = [{ ...prior, mean: prior.mean.map(() => 0) }];
      return tried({ ...leftover, rows, priors }, kind, [best.spread], weights)[0]!.found.mean;
    },
  };
}
