import type { LogAnswer } from '../../ask/outcome';

/** What is asked of the worker: the days, and what the fit says of level and doubts. */
export function awayAsked(days: number, visitDays: number, answer: LogAnswer | undefined) {
  const now = answer?.fit.now;
  return {
    ...{ days, visitDays, doubts: now?.doubts },
    levelErrorDkh: now && Math.sqrt(now.covariance[0]![0]!),
  };
}
