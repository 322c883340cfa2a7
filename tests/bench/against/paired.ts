import { cpuMs } from '../cpuMs';
import { quantile } from '../quantile';

const PAIRS = 9;

type Work = () => unknown;

/** Median ms of both, and the median of the pairs' ratios: taken turn by turn, in one process. */
export function paired(before: Work, after: Work, pairs = PAIRS) {
  for (let i = 0; i < 2; i++) {
    before();
    after();
  }
  const taken = Array.from({ length: pairs }, (_, i) => {
    if (i % 2) return { old: cpuMs(before), now: cpuMs(after) };
    const now = cpuMs(after);
    return { old: cpuMs(before), now };
  });
  return {
    before: quantile(
      taken.map(({ old }) => old),
      0.5,
    ),
    after: quantile(
      taken.map(({ now }) => now),
      0.5,
    ),
    faster: quantile(
      taken.map(({ old, now }) => old / now),
      0.5,
    ),
  };
}
