/** Where a drift is worked out as a quotient of differences, over so many hours to a side. */
export const QUOTIENT_H = 1e-4;
