/** So far apart two marks are told from one another at their full size, px. */
const APART_PX = 10;
const LEAST = 0.4;

/** How much smaller marks are drawn, so that many of them are no smear. */
export const shrunk = (count: number, widthPx: number): number =>
  Math.max(LEAST, Math.min(1, widthPx / (APART_PX * Math.max(1, count))));
