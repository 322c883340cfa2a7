export const en = {
  length: { hours: (count: string) => `${count} hours`, days: (count: string) => `${count} days` },
  alkalinity: {
    startsOutside: (low: string, high: string, end: string, length: string) =>
      `starts outside your ${low}–${high} and is at ${end} after ${length}`,
    fallsBelow: (limit: string, day: string, end: string, length: string) =>
      `falls below ${limit} on day ${day} and is at ${end} after ${length}`,
    risesAbove: (limit: string, day: string, end: string, length: string) =>
      `rises above ${limit} on day ${day} and is at ${end} after ${length}`,
    rises: (from: string, to: string, length: string) =>
      `rises from ${from} to ${to} in ${length}, inside your band so far`,
    falls: (from: string, to: string, length: string) =>
      `falls from ${from} to ${to} in ${length}, inside your band so far`,
    holds: (low: string, high: string, length: string) => `holds ${low}–${high} for ${length}`,
  },
  stopsOnDay: (day: string) => `stops on day ${day}`,
  phPeaks: (ph: string, day: string) => `pH peaks at ${ph} on day ${day}`,
  limewaterCovers: (percent: string) => `limewater covers ${percent} % of use`,
};
