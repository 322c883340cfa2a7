export const en = {
  above: (name: string, limit: string) => `${name} above ${limit}`,
  below: (name: string, limit: string) => `${name} below ${limit}`,
  after: (span: string) => `after ${span}`,
  between: (from: string, to: string) => `after ${from} to ${to}`,
  orNever: (span: string) => `after ${span} at the soonest, or not at all`,
  first: (lines: string) => `Left alone: ${lines}.`,
  nothingPassed: (span: string) =>
    `Left alone, none of alkalinity, pH, calcium, magnesium, salinity, temperature, oxygen, ammonia and the sump’s level passes your limits within ${span} because of it. What you see of the animals comes before any number.`,
  noticed: (span: string) =>
    `What each act buys is reckoned with it begun when the failure is noticed, after ${span}.`,
  reckoning: 'Working out what each act buys …',
  names: {
    batteryAir: (litres: string) => `Battery air pump, ${litres} L of air a minute`,
    scoop: (litres: string) => `Scooping and pouring, ${litres} L a minute`,
    carbonatedWater: (count: string, litres: string) =>
      `Carbonated plain water, ${count} × ${litres} L, an hour apart, pH measured before each`,
    putRight: 'Put right when it is noticed',
  },
  gained: {
    upTo: (most: string) => `up to ${most}`,
    between: (least: string, most: string) => `${least} to ${most}`,
    orMore: (least: string) => `${least} or more`,
  },
  laterBy: (line: string, after: string, before: string, gained: string) =>
    `${gained} gained: ${line} ${after}; without it ${before}`,
  kept: (line: string, span: string, before: string) =>
    `${line} not within ${span}; without it ${before}`,
  asSetToo: (worstOff: string, asSet: string) => `${worstOff} (${asSet} as set)`,
  lower: (name: string, without: string, withIt: string) =>
    `begun at this hour, in the tank that is worst off ${name} goes to ${without} without it; with it to ${withIt}`,
  shorter: (line: string, withIt: string, without: string) =>
    `${line} for ${withIt} in the tank as it is set; without it for ${without}`,
  shorterElsewhere: (line: string, withIt: string, without: string) =>
    `${line} for ${withIt} in a tank that this may be; without it for ${without}`,
  nothing: (line: string) =>
    `changes little of what was watched here: ${line} comes and goes as without it`,
  stops: (line: string, span: string) =>
    `keeps out what has not run in yet: the sooner, the more. Begun after ${span}, as here, it comes too late for one line: ${line} comes and goes as without it`,
  little: (line: string, withIt: string) =>
    `changes little in this tank: ${line} ${withIt}, as without it to the digits that are told`,
  practice: '; common practice asks for it all the same',
  practiceAir: '; common practice asks for it all the same, for the oxygen',
  costs: (line: string, withIt: string, without: string) =>
    `; but ${line} after ${withIt} instead of ${without}`,
  costsLittle: (line: string) => `; but ${line} a little sooner`,
  costsNew: (line: string, withIt: string) => `; but ${line} after ${withIt}`,
  withheld: 'Left out, since it would make this failure worse:',
  range: 'From the tank that is worst off to the one that is best off, of those that yours may be.',
  estimate:
    'Air moved by hand is an estimate (half of it where the short time stands): what the pump’s box says, shared among its tanks.',
  airLPerMin: 'Battery air pump',
  scoopLPerMin: 'Scooping and pouring',
};
