import type { LogAnswer } from './outcome';

/** Less than nothing by more than chance and corals that hardly grow make it, dKH a day. */
const NOTHING_DKH_PER_DAY = -0.1;

/** Whether readings would have the tank bring alkalinity: then they, or what is known of the dosing, are wrong. */
export const isUntold = ({ useNow }: Pick<LogAnswer, 'useNow'>): boolean =>
  useNow.dkhPerDay < NOTHING_DKH_PER_DAY;
