export const en = {
  putRight: (fault: string) => `noticed and put right: ${fault}`,
  passesAbove: (name: string, limit: string) => `${name} passes ${limit}`,
  fallsBelow: (name: string, limit: string) => `${name} falls below ${limit}`,
  atTheSoonest: (passes: string) => `${passes} at the soonest`,
  asSet: (passes: string) => `${passes}, as set`,
  backBelow: (name: string, limit: string) => `${name} back below ${limit}`,
  backAbove: (name: string, limit: string) => `${name} back above ${limit}`,
  runsDry: (ph: string) => `reservoir empty, pH ${ph}`,
  runsOver: 'the sump runs over onto the floor',
  warms: (perH: string, to: string) =>
    `Reckoned with ${perH} °C an hour, up to ${to}, as the failure is set: set what your thermometer shows.`,
  cools: (perH: string, to: string) =>
    `Reckoned with ${perH} °C an hour, down to ${to}, as the failure is set: set what your thermometer shows.`,
  pouredIn: (grams: string, additive: string) =>
    `Reckoned with ${grams} g of ${additive}, as the failure is set: set what it was and how much.`,
  stopsBefore: 'The trial ends before anything breaks, so there is no drill to tell.',
  worstHour: (worst: string, worstClock: string, clock: string, set: string) =>
    `Beginning at ${worstClock}, the worst hour of the day, pH would peak at ${worst}. At ${clock}, as set: ${set}`,
  also: (sides: string) => `Beside pH: ${sides}.`,
  oxygen: {
    first: (lines: string) => `Oxygen goes first: ${lines}.`,
    below: (limit: string, span: string) => `below ${limit} mg/L after ${span}`,
    and: ', ',
    between: (from: string, to: string) => `${from} to ${to}`,
    onlyClosed: (span: string) =>
      `${span} if no air reaches the surface and more is breathed (not at all with the gas exchange that is set and less breathed)`,
    already: (limit: string) => `Oxygen is below your ${limit} mg/L before anything breaks.`,
    kept: (limit: string, lowest: string) =>
      `Oxygen stays above your ${limit} mg/L; its lowest is ${lowest}.`,
    sooner: (clock: string, span: string) => `Beginning at ${clock}, it would be after ${span}.`,
    soonerAsSet: (clock: string, span: string) =>
      `Beginning at ${clock}, the time with air and breathing as set would be ${span}.`,
    breathed: (mgPerLPerH: string, how: string) =>
      `That is with ${mgPerLPerH} mg/L an hour breathed, ${how}.`,
    unmeasured: 'What is breathed is assumed: nobody has measured it.',
    typed: 'as you typed it',
    assumed: 'from fixed carbon, food and the word for stocking',
    twoTimes:
      'Where two times stand, the shorter is with no air at the surface at all and more breathed, the longer with the gas exchange that is set and less breathed.',
    before: 'Move water or air before you reckon.',
    warmth: (times: string) =>
      `Warm water holds less oxygen, and what lives in it breathes faster: ${times} times as much where it is 10 °C warmer (common practice, yours to change).`,
    howLong: (limit: string, span: string) => `Until oxygen is below ${limit} mg/L: ${span}.`,
  },
  leftAlone: {
    empty: (clock: string, ph: string) =>
      `If nobody notices, the reservoir is empty at ${clock} and pH peaks at ${ph}.`,
    peak: (ph: string, clock: string) => `If nobody notices, pH peaks at ${ph} at ${clock}.`,
  },
  chalk: {
    above: (ph: string, harm: string, span: string) =>
      `All of this is without chalk falling out, whose moment nobody can predict. If it fell at once, pH would peak at ${ph} and be above ${harm} for ${span} (illustration).`,
    below: (ph: string, harm: string) =>
      `All of this is without chalk falling out, whose moment nobody can predict. If it fell at once, pH would peak at ${ph}, below ${harm} (illustration).`,
  },
  allInside: (ph: string) =>
    `Everything that is watched stays inside your limits; pH peaks at ${ph}.`,
  nothingMore: (ph: string) =>
    `The failure takes nothing that is watched beyond your limits that was not beyond them anyway; pH peaks at ${ph}.`,
  withoutItToo: (sides: string) => `Not because of the failure: ${sides}.`,
  phNotAboveBut: (ph: string, high: string, sides: string) =>
    `${sides}. pH peaks at ${ph}, not above your ${high}.`,
  goesAbove: (name: string, limit: string) => `${name} goes above ${limit}`,
  goesBelow: (name: string, limit: string) => `${name} goes below ${limit}`,
  phBelowHarm: (ph: string, harm: string, high: string, span: string) =>
    `pH peaks at ${ph}; it stays below ${harm}, and is above your ${high} for ${span}.`,
  phBelowHarmNotBack: (ph: string, harm: string, high: string, span: string) =>
    `pH peaks at ${ph}; it stays below ${harm}, and is above your ${high} for ${span}, not back within the drill.`,
  phAbove: (ph: string, high: string, span: string) =>
    `pH peaks at ${ph}, and is above your ${high} for ${span}.`,
  phAboveNotBack: (ph: string, high: string, span: string) =>
    `pH peaks at ${ph}, and is above your ${high} for ${span}, not back within the drill.`,
  phAboveHarm: (ph: string, harm: string, harmSpan: string, high: string, span: string) =>
    `pH peaks at ${ph}; it is above ${harm} for ${harmSpan}, and above your ${high} for ${span}.`,
  phAboveHarmNotBack: (ph: string, harm: string, harmSpan: string, high: string, span: string) =>
    `pH peaks at ${ph}; it is above ${harm} for ${harmSpan}, and above your ${high} for ${span}, not back within the drill.`,
};
