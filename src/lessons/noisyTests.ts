import { readColumn, type Trace } from '../../shared/trace/trace';

/** Repeatability of a good alkalinity test, one standard deviation (common practice: 0.1–0.2). */
export const TEST_SIGMA_DKH = 0.15;

export interface NoisyTest {
  readonly day: number;
  readonly dkh: number;
}

/** Chance that is the same at every visit: mulberry32, 32 bits of state, as commonly published. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** One test a day at the same hour: what the engine says, and the scatter of a test kit. */
export function testsOf(trace: Trace, seed = 12): NoisyTest[] {
  const alkalinity = readColumn(trace, 'alkalinity_dkh');
  const draw = chance(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
  return Array.from({ length: Math.floor((trace.rows - 1) / 24) + 1 }, (_, day) => ({
    day,
    dkh: alkalinity[day * 24]! + TEST_SIGMA_DKH * normal(),
  }));
}

export interface TestLine {
  readonly slopePerDay: number;
  readonly atDay0: number;
  /** Standard uncertainty of the slope when each test scatters by TEST_SIGMA_DKH. */
  readonly doubtPerDay: number;
}

/** Least squares through the tests; the doubt is σ / √Σ(t − t̄)². */
export function lineThrough(tests: readonly NoisyTest[]): TestLine {
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const day = mean(tests.map((test) => test.day));
  const dkh = mean(tests.map((test) => test.dkh));
  const spread = tests.reduce((sum, test) => sum + (test.day - day) ** 2, 0);
  const together = tests.reduce((sum, test) => sum + (test.day - day) * (test.dkh - dkh), 0);
  const slopePerDay = together / spread;
  return {
    slopePerDay,
    atDay0: dkh - slopePerDay * day,
    doubtPerDay: TEST_SIGMA_DKH / Math.sqrt(spread),
  };
}
