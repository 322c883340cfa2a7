import { say } from '../words/quantities';

/** A unit as the reader says it: "L/day" is "L/Tag" in German; symbols are the same everywhere. */
export const spokenUnit = (unit: string): string =>
  unit.replace(/\b(days?)\b/u, (word) => say.units[word as keyof typeof say.units]);
