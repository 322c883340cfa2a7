import type { SeawaterConstants } from './constants';

/** What a probe set in NBS buffers would read: takahashi1982. A real probe strays by 0.1. */
export function phNbsFromPhTotal(
  phTotal: number,
  k: Pick<SeawaterConstants, 'hSwsPerHTotal' | 'fH'>,
): number {
  return phTotal - Math.log10(k.hSwsPerHTotal * k.fH);
}

export function phTotalFromPhNbs(
  phNbs: number,
  k: Pick<SeawaterConstants, 'hSwsPerHTotal' | 'fH'>,
): number {
  return phNbs + Math.log10(k.hSwsPerHTotal * k.fH);
}
