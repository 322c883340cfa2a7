/**
 * Stands in for d3-interpolate, which d3-scale brings along for dates, texts, lists and colours: our
 * scales map numbers to numbers, and a first visit need not fetch what no scale asks for
 * (vite.config.ts).
 */
export const interpolateNumber = (a: number, b: number) => (t: number) => a * (1 - t) + b * t;

/** Asked for by scales that round, or go through several stops: none of ours. */
const none = (): never => {
  throw new TypeError('Scales map numbers to numbers here (vite.config.ts).');
};

export { interpolateNumber as interpolate, none as interpolateRound, none as piecewise };
