import type { Restless, Row } from './wander';

/** One way in which a tank may not be at rest, and how likely before the log is read. */
export interface Kind extends Restless {
  readonly logPrior: number;
}

/**
 * How restless tanks are, and how likely. Use a share of itself after a day, level in dKH: common
 * practice. tests/log/twins hold it where the truth is drawn from it, and where tanks do not wander.
 */
export const USE_WALKS = [
  [0, 0.55],
  [0.01, 0.2],
  [0.03, 0.15],
  [0.08, 0.1],
] as const;
export const LEVEL_WALKS = [
  [0, 0.45],
  [0.05, 0.35],
  [0.12, 0.2],
] as const;

/** Odds that use, or what the test reads, jumped somewhere in a log, and by how much. */
const JUMP_ODDS = 0.06;
/** Corals that fare otherwise, or a pump that brought about all that is used and stands. */
const USE_JUMP_SHARES = [0.3, 1];
const LEVEL_JUMP_DKH = 0.3;
const MOST_JUMPS = 10;
/** Poured in or changed and not noted, or chalk that fell out: the water itself stands elsewhere at once, dKH. */
export const SUDDEN_DKH = 3;
const SUDDEN_ODDS = 0.02;
/** Neighbours that agree within this, in σ of their difference, are as the run has them; of the rest the farthest apart are tried. */
const LEAST_SUDDEN = 2.5;
const MOST_SUDDEN = 3;
/** More leaps than this in one log and it has to be kept better. */
const MOST_LEAPS = 10;
/** With fewer readings for each, what leaps is the test. */
const READINGS_PER_LEAP = 5;

export const mostLeaps = (tests: number): number => Math.min(MOST_LEAPS, tests / READINGS_PER_LEAP);

/** What shares of the use are counted in, dKH/day: corals that take nothing may wander, too. */
export const usualUseOf = (useDkhPerDay: number): number => 0.2 + Math.max(0, useDkhPerDay);

/** A little restlessness all along. */
export const walks = (usualUse: number): Kind[] =>
  USE_WALKS.flatMap(([useShare, byUse]) =>
    LEVEL_WALKS.map(([levelDkh, byLevel]) => ({
      ...{ useDkhPerDay: useShare * usualUse, levelDkh },
      logPrior: Math.log(byUse * byLevel),
    })),
  );

export const isSudden = ({ leaps }: Restless): boolean => leaps !== undefined;

/**
 * Rest but for moments between readings that are farther apart than the run has them: one of the widest,
 * or all of them, for whoever pours in on Sundays what no line tells.
 */
export function sudden(rows: readonly Row[]): Kind[] {
  const tests = rows.filter(({ wanders }) => wanders);
  const apart = tests
    .slice(2, -1)
    .map(({ timeH, left, variance }, i) => {
      const before = tests[i + 1]!;
      const sigma = Math.sqrt(variance + before.variance);
      return { atH: (timeH + before.timeH) / 2, wide: Math.abs(left - before.left) / sigma };
    })
    .filter(({ wide }) => wide > LEAST_SUDDEN);
  const widest = apart.toSorted((a, b) => b.wide - a.wide).slice(0, MOST_SUDDEN);
  const together = apart.length > 1 && apart.length <= mostLeaps(tests.length);
  const all = [...widest.map((one) => [one]), ...(together ? [apart] : [])];
  const logPrior = Math.log(SUDDEN_ODDS / Math.max(1, all.length));
  return all.map((some) => ({
    ...{ useDkhPerDay: 0, levelDkh: 0, logPrior },
    leaps: { atH: some.map(({ atH }) => atH), levelDkh: SUDDEN_DKH },
  }));
}

/** Rest but for one jump, at one of some moments between readings. */
export function jumps(rows: readonly Row[], usualUse: number): Kind[] {
  const between = rows.slice(2, -1).map(({ timeH }, i) => (timeH + rows[i + 1]!.timeH) / 2);
  const every = Math.ceil(between.length / MOST_JUMPS);
  const moments = between.filter((_, i) => i % every === 0);
  const kinds = [
    ...USE_JUMP_SHARES.map((share) => ({ useDkhPerDay: share * usualUse, levelDkh: 0 })),
    { useDkhPerDay: 0, levelDkh: LEVEL_JUMP_DKH },
  ];
  const logPrior = Math.log(JUMP_ODDS / kinds.length / Math.max(1, moments.length));
  return moments.flatMap((atH) =>
    kinds.map((kind) => ({ useDkhPerDay: 0, levelDkh: 0, jump: { atH, ...kind }, logPrior })),
  );
}
