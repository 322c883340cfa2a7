import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/turn';
import type { Reached, Turned } from '../../ask/outcome';

/** So far ahead a level is looked for, as the study looks. */
const LOOKED_DAYS = 60;

/** "8.5 within ten days": yes after so many, or where it then stands. */
export function byDaySentence(
  { targetDkh, dkh, settled }: Pick<Turned, 'targetDkh' | 'dkh' | 'settled'>,
  days: number,
): string {
  if (!settled) return '';
  const [target, asked] = [figure(targetDkh, 1), figure(days)] as const;
  if (settled.days <= days) return say.byDay.inTime(target, settled.days, asked);
  const from = Math.round(days) * 24;
  const day = dkh.slice(from, from + 24);
  const at = day.reduce((sum, value) => sum + value, 0) / day.length;
  return say.byDay.late(target, settled.days, asked, figure(at, 1));
}

/** "When does it reach 9?", as the tank runs now. */
export function reachedSentence({ dkh, days, soonestDays, latestDays, endsDkh }: Reached): string {
  const told = say.reaches;
  if (days === undefined) {
    return told.never(figure(dkh), String(LOOKED_DAYS), figure(endsDkh, 1));
  }
  const range =
    latestDays === undefined
      ? told.orNever(soonestDays ?? days)
      : told.within(soonestDays ?? days, latestDays);
  return `${told.on(figure(dkh), days)}${range}`;
}
