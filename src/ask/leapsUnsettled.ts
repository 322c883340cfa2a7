import type { LogAnswer } from './outcome';

/** So many readings since, and it happened once: the tank goes on from there. */
const SETTLED = 3;

/** Whether the water was moved at once by what the log does not have, with few readings since. */
export const leapsUnsettled = ({ fit: { leaps, points } }: Pick<LogAnswer, 'fit'>): boolean =>
  leaps.some(
    ({ afterH }) =>
      points.filter(({ kind, timeH }) => kind === 'alkalinity' && timeH >= afterH).length < SETTLED,
  );
