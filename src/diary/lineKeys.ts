import type { Reading } from '../../shared/log/reading';
import { said } from '../store/said';

/** A name for each line that stays with it whatever comes before it, and though a copy replaces it. */
export function lineKeys(readings: readonly Reading[]): string[] {
  const met = new Map<string, number>();
  return readings.map((reading) => {
    const text = said(reading);
    const before = met.get(text) ?? 0;
    met.set(text, before + 1);
    return `${text} ${before}`;
  });
}
