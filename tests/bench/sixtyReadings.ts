import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';

export const START_H = 20_454 * 24 + 10;
const READINGS = 60;

/** What a keeper reads in two months, a day apart. */
export const sixtyReadings = Array.from({ length: READINGS }, (_, day): Reading => ({
  at: localTimeOf(START_H + day * 24),
  alkalinityDkh: 8.5 + 0.15 * Math.sin(day * 7),
}));
