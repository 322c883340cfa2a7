import { readColumn, type Trace } from '../../../shared/trace/trace';

const DAY_H = 24;

/** Largest move of alkalinity within any twenty-four hours, up or down, dKH. */
export function largestMoveDkh(trace: Trace): number {
  const dkh = readColumn(trace, 'alkalinity_dkh');
  let largest = 0;
  for (let to = 1; to < dkh.length; to++) {
    for (let from = Math.max(0, to - DAY_H); from < to; from++) {
      largest = Math.max(largest, Math.abs(dkh[to]! - dkh[from]!));
    }
  }
  return largest;
}
