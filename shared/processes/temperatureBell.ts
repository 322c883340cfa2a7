/** Where corals grow best, and where they stop (common practice). */
const BEST_C = 27;
const COLDEST_C = 18;
const WARMEST_C = 32;
/** Below this a tank's corals grow where the law says they cannot: it does not describe them. */
const LEAST = 0.1;

/** 1 at the best temperature, falling smoothly to 0 at the coldest and the warmest. */
export function temperatureBell(tempC: number): number {
  const width = tempC < BEST_C ? BEST_C - COLDEST_C : WARMEST_C - BEST_C;
  const away = Math.abs(tempC - BEST_C) / width;
  return away >= 1 ? 0 : Math.cos((away * Math.PI) / 2) ** 2;
}

/** How the bell changes with each degree. */
function bellSlope(tempC: number): number {
  const width = tempC < BEST_C ? BEST_C - COLDEST_C : WARMEST_C - BEST_C;
  const away = (tempC - BEST_C) / width;
  return Math.abs(away) >= 1 ? 0 : (-Math.PI / 2 / width) * Math.sin(away * Math.PI);
}

/**
 * How much faster corals grow at a temperature than at the start's, at which their use was
 * measured. A tank that starts where nothing should grow gets no answer to temperature.
 */
export function temperatureFactor(tempC: number, startTempC: number): number {
  const atStart = temperatureBell(startTempC);
  return tempC === startTempC || atStart < LEAST ? 1 : temperatureBell(tempC) / atStart;
}

/** How that changes with each degree. */
export function temperatureSlope(tempC: number, startTempC: number): number {
  const atStart = temperatureBell(startTempC);
  return atStart < LEAST ? 0 : bellSlope(tempC) / atStart;
}
