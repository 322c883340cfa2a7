/**
 * Stands in for d3-format, which d3-scale brings along to write marks of an axis: ours are written by
 * `tickText` (vite.config.ts).
 */
const none = (): never => {
  throw new TypeError('Marks of an axis are written by tickText (vite.config.ts).');
};

export {
  none as format,
  none as formatPrefix,
  none as formatSpecifier,
  none as precisionFixed,
  none as precisionPrefix,
  none as precisionRound,
};
