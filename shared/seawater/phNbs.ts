import type { SeawaterConstants } from './constants';

/** What a probe set in NBS buffers would read: takahashi1982. A real probe strays by 0.1. */
export const phNbsFromPhTotal = (
  phTotal: number,
  k: Pick<SeawaterConstants, 'phTotalOverPhNbs'>,
): number => phTotal - k.phTotalOverPhNbs;

export const phTotalFromPhNbs = (
  phNbs: number,
  k: Pick<SeawaterConstants, 'phTotalOverPhNbs'>,
): number => phNbs + k.phTotalOverPhNbs;
