import type { Before } from './before';
import {
  follow,
  type Followed,
  type ReadingError,
  type Restless,
  type Row,
  type State,
} from './wander';

/** What is left of the readings about a fitted run, and how far the fitted numbers are known. */
export interface Leftover {
  readonly rows: readonly Row[];
  /** One or the other holds. */
  readonly priors: readonly Before[];
  readonly endH: number;
  /** What restlessness of the use is a share of, dKH/day. */
  readonly usualUse: number;
}

export interface Settlement extends State {
  /** Spread of the readings against their stated σ. */
  readonly spread: number;
  readonly restless: Restless;
  /** Share that each reading counts for: near 1, or little where it lies far off. */
  readonly weights: readonly number[];
  readonly errors: readonly ReadingError[];
  readonly jump: Jump | undefined;
  /** What the mean would be of other leftovers, all else as it is. */
  readonly answerTo: (left: readonly number[]) => readonly number[];
}

/** A moment from which the readings fall faster, or more slowly, than before. */
export interface Jump {
  /** Hours since the start of the log. */
  readonly atH: number;
  readonly byDkhPerDay: number;
}

interface Guess extends Restless {
  readonly spread: number;
  readonly logPrior: number;
}

/** Student's t: a reading three σ off happens, one six σ off is a slip (Lange, Little & Taylor 1989). */
const FREEDOM = 4;
/** So many passes settle the weights. */
const PASSES = 5;
/** A jump is spoken of when nothing else is half as likely. */
const SURE = 0.67;

/** How restless tanks are, and how likely before the log is read: calibrated on the twins. */
const USE_WALKS = [
  [0, 0.55],
  [0.01, 0.2],
  [0.03, 0.15],
  [0.08, 0.1],
] as const;
const LEVEL_WALKS = [
  [0, 0.45],
  [0.05, 0.35],
  [0.12, 0.2],
] as const;
const SPREADS = [0.5, 0.65, 0.8, 1, 1.25, 1.6, 2.1, 3];
const LN_SPREAD_SIGMA = 0.35;

/** Odds that use, or what the test reads, jumped somewhere in a log, and by how much. */
const JUMP_ODDS = 0.06;
/** Corals that fare otherwise, or a pump that brought about all that is used and stands. */
const USE_JUMP_SHARES = [0.3, 1];
const LEVEL_JUMP_DKH = 0.3;
const MOST_JUMPS = 10;

const spreadPrior = (spread: number): number => -((Math.log(spread) / LN_SPREAD_SIGMA) ** 2) / 2;

/** A little restlessness all along. */
const walks = (usualUse: number): Guess[] =>
  USE_WALKS.flatMap(([useShare, byUse]) =>
    LEVEL_WALKS.flatMap(([levelDkh, byLevel]) =>
      SPREADS.map((spread) => ({
        ...{ useDkhPerDay: useShare * usualUse, levelDkh, spread },
        logPrior: Math.log(byUse * byLevel) + spreadPrior(spread),
      })),
    ),
  );

/** Rest but for one jump, at one of some moments between readings. */
function jumps({ rows, usualUse }: Leftover, spreads: readonly number[]): Guess[] {
  const between = rows.slice(2, -1).map(({ timeH }, i) => (timeH + rows[i + 1]!.timeH) / 2);
  const every = Math.ceil(between.length / MOST_JUMPS);
  const moments = between.filter((_, i) => i % every === 0);
  const kinds = [
    ...USE_JUMP_SHARES.map((share) => ({ useDkhPerDay: share * usualUse, levelDkh: 0 })),
    { useDkhPerDay: 0, levelDkh: LEVEL_JUMP_DKH },
  ];
  const odds = JUMP_ODDS / kinds.length / Math.max(1, moments.length);
  return moments.flatMap((atH) =>
    kinds.flatMap((kind) =>
      spreads.map((spread) => ({
        ...{ useDkhPerDay: 0, levelDkh: 0, jump: { atH, ...kind }, spread },
        logPrior: Math.log(odds) + spreadPrior(spread),
      })),
    ),
  );
}

/** A t of the same Fisher information as a normal is so much narrower, in variance. */
const NARROWER = (FREEDOM + 3) / (FREEDOM + 1);

/** Weight of a reading by its squared error in σ, so scaled that a usual one counts about one. */
const weightOf = (squared: number): number => (FREEDOM + 1) / (FREEDOM + NARROWER * squared);

/** E[e²]. */
const squareOf = ({ mean, variance }: ReadingError): number => mean ** 2 + variance;

function tried(
  { rows, priors, endH }: Leftover,
  guesses: readonly Guess[],
  weights: readonly number[],
) {
  const all = guesses.flatMap((guess) => {
    const noisy = rows.map((row, i) => ({
      ...row,
      variance: (row.variance * guess.spread ** 2) / weights[i]!,
    }));
    return priors.map((prior) => {
      const found = follow(noisy, prior, guess, endH);
      return {
        guess,
        prior,
        found,
        log: found.logEvidence + guess.logPrior + Math.log(prior.odds),
      };
    });
  });
  const most = Math.max(...all.map(({ log }) => log));
  const odds = all.map(({ log }) => Math.exp(log - most));
  const total = odds.reduce((a, b) => a + b);
  return all.map((one, i) => ({ ...one, share: odds[i]! / total }));
}

type Tried = ReturnType<typeof tried>;

const mix = (all: Tried, of: (one: Tried[number]) => number): number =>
  all.reduce((sum, one) => sum + one.share * of(one), 0);

/** Mean and covariance of the whole grid: what each guess finds, and how far they differ. */
function mixed(all: Tried): State {
  const counted = all.filter(({ share }) => share > 1e-4);
  const mean = all[0]!.found.mean.map((_, i) => mix(counted, ({ found }) => found.mean[i]!));
  const covariance = mean.map((m, i) =>
    mean.map((n, k) =>
      mix(
        counted,
        ({ found }: { found: Followed }) =>
          found.covariance[i]![k]! + (found.mean[i]! - m) * (found.mean[k]! - n),
      ),
    ),
  );
  return { mean, covariance };
}

/**
 * Weighs the readings by Student's t and lets use and level wander, averaged over a small grid of
 * how much. `weights` come first from the plain fit.
 */
export function robustly(leftover: Leftover, first: readonly number[]): Settlement {
  const calm = walks(leftover.usualUse);
  let weights = first;
  let all = tried(leftover, calm, weights);
  for (let pass = 1; pass < PASSES; pass++) {
    const { found, guess } = likeliest(all);
    const errors = found.errors();
    weights = leftover.rows.map(({ variance }, i) =>
      weightOf(squareOf(errors[i]!) / (variance * guess.spread ** 2)),
    );
    const at = SPREADS.indexOf(guess.spread);
    const near = pass < PASSES - 2 ? [] : SPREADS.slice(Math.max(0, at - 1), at + 2);
    all = tried(leftover, [...calm, ...jumps(leftover, near)], weights);
  }
  const { guess, prior, found } = likeliest(all);
  return {
    ...mixed(all),
    weights,
    errors: found.errors(),
    spread: Math.exp(mix(all, ({ guess }) => Math.log(guess.spread))),
    restless: {
      useDkhPerDay: Math.sqrt(mix(all, ({ guess }) => guess.useDkhPerDay ** 2)),
      levelDkh: Math.sqrt(mix(all, ({ guess }) => guess.levelDkh ** 2)),
    },
    jump: jumpOf(all),
    answerTo: (left) => {
      const rows = leftover.rows.map((row, i) => ({ ...row, left: left[i]! }));
      const priors = [{ ...prior, mean: prior.mean.map(() => 0) }];
      return tried({ ...leftover, rows, priors }, [guess], weights)[0]!.found.mean;
    },
  };
}

const likeliest = (all: Tried): Tried[number] => all.reduce((a, b) => (b.share > a.share ? b : a));

/** A jump of the use that is likelier than rest. */
function jumpOf(all: Tried): Jump | undefined {
  const ofUse = all.filter(({ guess }) => (guess.jump?.useDkhPerDay ?? 0) > 0);
  const share = ofUse.reduce((sum, one) => sum + one.share, 0);
  if (share < SURE) return undefined;
  const { guess, found } = likeliest(ofUse);
  return { atH: guess.jump!.atH, byDkhPerDay: found.mean.at(-2)! };
}

/** Weights of a plain fit's leftovers, on the scale of their own median. */
export function firstWeights(leftInSigma: readonly number[]): number[] {
  const sizes = leftInSigma.map(Math.abs).toSorted((a, b) => a - b);
  // The median of |normal| is 0.6745 σ.
  const scale = Math.max(0.7, (sizes[Math.floor(sizes.length / 2)] ?? 0) / 0.6745);
  return leftInSigma.map((left) => weightOf((left / scale) ** 2));
}
