/** To so many decimals. */
const round = (value: number, decimals = 0): number => {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale;
};

/** What an expression of time may call. */
export const timeFunctions: Readonly<Record<string, (...numbers: number[]) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  exp: Math.exp,
  log: (value, base = Math.E) =>
    base === Math.E ? Math.log(value) : Math.log(value) / Math.log(base),
  sqrt: Math.sqrt,
  abs: Math.abs,
  floor: Math.floor,
  ceil: Math.ceil,
  round,
  min: Math.min,
  max: Math.max,
  mod: (a, b) => a - b * Math.floor(a / b),
};
