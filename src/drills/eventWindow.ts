import type { TimeWindow } from '../charts/timeWindow';
import type { LineResult } from '../../shared/verdict/lineResult';

/** What goes before the failure is worth this much of the picture, h. */
const BEFORE_H = 6;
const LEAST_H = 72;

/**
 * The stretch in which a failure happens: from some hours before it until every limit is back, or
 * three days, whichever is longer; never beyond the trial.
 */
export function eventWindow(
  faultH: number,
  lines: readonly Pick<LineResult, 'firstH' | 'backH' | 'already'>[],
  totalH: number,
): TimeWindow {
  const backs = lines
    .filter(({ firstH, already }) => firstH !== undefined && !already)
    .map(({ backH }) => backH ?? totalH);
  return {
    fromH: Math.max(0, Math.floor(faultH - BEFORE_H)),
    toH: Math.min(totalH, Math.ceil(Math.max(faultH + LEAST_H, ...backs))),
  };
}
