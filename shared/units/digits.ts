/**
 * The one place that cuts digits; a lint rule keeps it so. What is for people goes through
 * `shared/words/figure` or `shared/units/format`, which set the reader's sign and units.
 */

/** So many decimals, with a point: for coordinates, and for whoever sets the sign. */
export const fixed = (value: number, decimals: number): string => value.toFixed(decimals);

/** Rounded to so many decimals, a number still. */
export const toDecimals = (value: number, decimals: number): number =>
  Number(value.toFixed(decimals));

/** Rounded to so many figures, a number still. */
export const toFigures = (value: number, figures: number): number =>
  Number(value.toPrecision(figures));

/** So many figures with their zeros, with a point: for tables of developers. */
export const inFigures = (value: number, figures: number): string => value.toPrecision(figures);
