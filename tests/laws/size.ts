/**
 * How long the laws are tried, from one place. LAW_SCALE 1 is the full size, which the proof asks
 * for; a run of the unit tests takes a tenth. LAW_SEED draws another sample than the usual one.
 */
const scale = Number(process.env.LAW_SCALE ?? 0.1);
const seed = Number(process.env.LAW_SEED ?? 20260101);
if (!(scale > 0)) throw new RangeError(`LAW_SCALE is ${process.env.LAW_SCALE}; expected above 0`);

/** Whether this is the full size: what takes too long for every day is tried then alone. */
export const isFull = scale >= 1;

/**
 * Options for fast-check: so many runs at full size, at least three; the seed makes them repeat. A law
 * whose runs take seconds is tried with a share of what others are, every day.
 */
export const runsOf = (full: number, share = 1) => ({
  numRuns: Math.max(3, Math.round(full * scale * (isFull ? 1 : share))),
  seed,
  // The seed leads back to it; to shrink a tank that takes seconds would take hours.
  endOnFailure: true,
});

/** A test may take so long, ms: on a slow machine, and at full size beside other work. */
export const patience = 60_000 * Math.max(1, 30 * scale - 2);
