export const en = {
  length: { hours: (count: string) => `${count} hours`, days: (count: string) => `${count} days` },
  alkalinity: {
    startsOutside: (low: string, high: string, end: string, length: string) =>
      `starts outside your ${low}–${high} and is at ${end} after ${length}`,
    fallsBelow: (limit: string, day: string, end: string, length: string) =>
      `falls below ${limit} on day ${day} and is at ${end} after ${length}`,
    risesAbove: (limit: string, day: string, end: string, length: string) =>
      `rises above ${limit} on day ${day} and is at ${end} after ${length}`,
    rises: (from: string, to: string, length: string, band: string) =>
      `rises from ${from} to ${to} in ${length}, inside ${band} so far`,
    falls: (from: string, to: string, length: string, band: string) =>
      `falls from ${from} to ${to} in ${length}, inside ${band} so far`,
    holds: (range: string, length: string) => `holds ${range} for ${length}`,
  },
  noSuchWater: 'no such water stays clear: chalk would have fallen before',
  stopsOnDay: (day: string) => `stops on day ${day}`,
  phPeaks: (ph: string, day: string) => `pH peaks at ${ph} on day ${day}`,
  limewaterCovers: (percent: string) => `limewater covers ${percent} % of use`,
  stops: {
    noWater: (hour: string, salinity: string, litres: string) =>
      `The trial stops at hour ${hour}: in the tank next to no water is left (salinity ${salinity} with ${litres} left). Refill sooner, or look for the leak.`,
    tooSalty: (hour: string, salinity: string, litres: string) =>
      `The trial stops at hour ${hour}: in the tank too much water has evaporated (salinity ${salinity} with ${litres} left), beyond the chemistry here. Refill the reservoir sooner, or check the evaporation.`,
    noChemistry: (hour: string, why: string) =>
      `The trial stops at hour ${hour}: in the tank ${why}.`,
    neverEnds: (hour: string, steps: string) =>
      `The trial stops at hour ${hour}: something switches or reacts so often (more than ${steps} times within the hour) that it cannot be followed. Look for a dead band or a portion close to nothing.`,
  },
};
