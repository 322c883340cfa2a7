/** One reading as the wandering tank sees it. */
export interface Row {
  readonly timeH: number;
  /** What the fitted run left over. */
  readonly left: number;
  /** How the reading moves with each fitted number. */
  readonly slopes: readonly number[];
  /** Whether the water's wandering shows in it: in alkalinity, not in pH. */
  readonly wanders: boolean;
  readonly variance: number;
}

/** How restless a tank is, σ after a day. */
export interface Restless {
  /** Of what the corals take, dKH/day. */
  readonly useDkhPerDay: number;
  /** Of the level itself: what nobody wrote down, dKH. */
  readonly levelDkh: number;
  /** A moment at which either may have jumped, by so much. */
  readonly jump?: {
    readonly atH: number;
    readonly useDkhPerDay: number;
    readonly levelDkh: number;
  };
  /** Moments at each of which the water itself may have been moved, in order of time, by so much. */
  readonly leaps?: { readonly atH: readonly number[]; readonly levelDkh: number };
}

/** Mean and covariance of: the fitted numbers' corrections, the use's wandering, the level's. */
export interface State {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

export interface Followed extends State {
  readonly logEvidence: number;
  /** Each reading's own error, knowing all of them: reckoned when it is asked for. */
  readonly errors: () => readonly ReadingError[];
}

/** A reading's own error, knowing all readings. */
export interface ReadingError {
  readonly mean: number;
  readonly variance: number;
}

interface Innovation {
  readonly observed: readonly number[];
  readonly gain: readonly number[];
  readonly miss: number;
  readonly variance: number;
  readonly daysBefore: number;
}

const dot = (a: readonly number[], b: readonly number[]): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
};

const times = (matrix: readonly (readonly number[])[], vector: readonly number[]): number[] =>
  matrix.map((row) => dot(row, vector));

/**
 * Use and level as random walks about the fitted run: generalised least squares, done reading by
 * reading (Kalman 1960), and each reading's error knowing all of them by going back (de Jong 1989,
 * as in Durbin & Koopman 2012, Time Series Analysis by State Space Methods, from memory).
 */
export function follow(
  rows: readonly Row[],
  prior: { readonly mean: readonly number[]; readonly sigma: readonly number[] },
  restless: Restless,
  endH: number,
): Followed {
  const fitted = prior.mean.length;
  const [use, level] = [fitted, fitted + 1];
  const mean = [...prior.mean, 0, 0];
  const covariance = mean.map((_, i) =>
    mean.map((_, k) => (i === k ? (prior.sigma[i] ?? 0) ** 2 : 0)),
  );
  const { jump, leaps } = restless;
  const moments = [
    ...(jump ? [jump] : []),
    ...(leaps?.atH.map((atH) => ({ atH, useDkhPerDay: 0, levelDkh: leaps.levelDkh })) ?? []),
  ];
  let timeH = 0;
  let logEvidence = 0;
  const seen: Innovation[] = [];

  /** Higher use lowers the level for as long as it lasts. */
  function passDays(days: number): void {
    mean[level]! -= mean[use]! * days;
    for (const row of covariance) row[level]! -= row[use]! * days;
    for (let i = 0; i < mean.length; i++) covariance[level]![i]! -= covariance[use]![i]! * days;
    const byUse = restless.useDkhPerDay ** 2;
    covariance[use]![use]! += byUse * days;
    covariance[use]![level]! -= (byUse * days ** 2) / 2;
    covariance[level]![use]! -= (byUse * days ** 2) / 2;
    covariance[level]![level]! += (byUse * days ** 3) / 3 + restless.levelDkh ** 2 * days;
  }

  function passTo(endH: number): void {
    for (const { atH, useDkhPerDay, levelDkh } of moments) {
      if (atH <= timeH || atH > endH) continue;
      passDays((atH - timeH) / 24);
      covariance[use]![use]! += useDkhPerDay ** 2;
      covariance[level]![level]! += levelDkh ** 2;
      timeH = atH;
    }
    passDays((endH - timeH) / 24);
    timeH = endH;
  }

  for (const row of rows) {
    const daysBefore = (row.timeH - timeH) / 24;
    passTo(row.timeH);
    const observed = [...row.slopes, 0, row.wanders ? 1 : 0];
    const carried = times(covariance, observed);
    const variance = dot(observed, carried) + row.variance;
    const miss = row.left - dot(observed, mean);
    const gain = carried.map((c) => c / variance);
    for (let i = 0; i < mean.length; i++) {
      mean[i]! += gain[i]! * miss;
      for (let k = 0; k < mean.length; k++) covariance[i]![k]! -= gain[i]! * carried[k]!;
    }
    logEvidence -= (Math.log(variance) + miss ** 2 / variance) / 2;
    seen.push({ observed, gain, miss, variance, daysBefore });
  }
  passTo(endH);
  return { mean, covariance, logEvidence, errors: () => lookBack(rows, seen, use, level) };
}

/** Goes back through the readings with what the later ones say of each. */
function lookBack(
  rows: readonly Row[],
  seen: readonly Innovation[],
  use: number,
  level: number,
): ReadingError[] {
  const size = level + 1;
  let score = new Array<number>(size).fill(0);
  let information = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const errors: ReadingError[] = [];
  for (let n = rows.length - 1; n >= 0; n--) {
    const { observed, gain, miss, variance, daysBefore } = seen[n]!;
    const noise = rows[n]!.variance;
    const told = times(information, gain);
    const along = miss / variance - dot(gain, score);
    const spread = dot(gain, told) + 1 / variance;
    errors.unshift({ mean: noise * along, variance: Math.max(0, noise - noise ** 2 * spread) });
    score = score.map((s, i) => s + observed[i]! * along);
    information = information.map((row, i) =>
      row.map(
        (value, k) =>
          value -
          observed[i]! * told[k]! -
          told[i]! * observed[k]! +
          observed[i]! * observed[k]! * spread,
      ),
    );
    score[use]! -= daysBefore * score[level]!;
    for (const row of information) row[use]! -= daysBefore * row[level]!;
    for (let i = 0; i < size; i++) information[use]![i]! -= daysBefore * information[level]![i]!;
  }
  return errors;
}
