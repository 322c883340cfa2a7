import type { Mark } from './fanShape';

/** Marks of a stretch of time: notes, which are read one by one, and all others. */
export function marksSeen(marks: readonly Mark[], fromH: number, toH: number) {
  const seen = marks.filter(({ timeH }) => timeH >= fromH && timeH <= toH);
  return {
    notes: seen.filter(({ kind }) => kind === 'note'),
    told: seen.filter(({ kind }) => kind !== 'note'),
  };
}
