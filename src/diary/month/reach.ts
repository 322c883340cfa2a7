import { hoursOf } from '../../../shared/log/localTime';
import type { LogAnswer } from '../../ask/outcome';
import type { TimeWindow } from '../../charts/timeWindow';

/** How much of a log a picture may show; hours since its start. */
export interface Reach {
  readonly startAt: string;
  /** Where the newest line of the log is. */
  readonly endH: number;
  /** What is shown until another stretch is asked for. */
  readonly rest: TimeWindow;
  readonly whole: TimeWindow;
}

/** At rest a picture looks back this far, h. */
export const BACK_H = 30 * 24;
const AHEAD_H = 14 * 24;

/** Of the fitted tank with a fortnight of its forecast, and of what was read before the fit begins. */
export function fittedReach({ fit: { startAt, endH } }: LogAnswer, firstAt = startAt): Reach {
  const toH = endH + AHEAD_H;
  return {
    ...{ startAt, endH },
    rest: { fromH: Math.max(0, endH - BACK_H), toH },
    whole: { fromH: Math.min(0, hoursOf(firstAt) - hoursOf(startAt)), toH },
  };
}
