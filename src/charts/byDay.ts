import type { TimeWindow } from './timeWindow';

/** From so many hours on a day is too narrow to read: a ribbon from lowest to highest, and its mean. */
const LONG_VIEW_H = 24 * 7;

export const isLongView = ({ fromH, toH }: TimeWindow): boolean => toH - fromH >= LONG_VIEW_H;

/** A row a day from one to another, both included: enough for a ribbon. */
export const rowADay = (from: number, to: number): number[] =>
  Array.from({ length: Math.ceil((to - from) / 24) + 1 }, (_, i) => Math.min(to, from + 24 * i));
