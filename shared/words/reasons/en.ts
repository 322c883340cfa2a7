const days = (count: string | number) => (Number(count) === 1 ? 'day' : 'days');

export const en = {
  outside: {
    reaches: (value: string, day: string, limit: string) =>
      `reaches ${value} on day ${day} (your limit ${limit})`,
    sinks: (value: string, day: string, limit: string) =>
      `sinks to ${value} on day ${day} (your limit ${limit})`,
    and: ' and ',
    all: (what: string) => `Outside your limits: ${what}.`,
  },
  everythingInside: (watched: string) =>
    `Everything that is watched stays inside your limits: ${watched}.`,
  harm: {
    phHarm: (limit: string, day: string) =>
      `pH is above ${limit} from day ${day}: harm to fish and corals is expected there.`,
    alkalinityHarm: (limit: string, day: string) =>
      `Alkalinity is below ${limit} from day ${day}: stony corals are expected to suffer there, not only to slow down (common practice).`,
    oxygenHarm: (limit: string, day: string) =>
      `Oxygen is below ${limit} from day ${day}: harm to fish and corals is expected there (Frontiers in Marine Science 2022, abstract).`,
    temperatureHarm: (limit: string, day: string) =>
      `The water is above ${limit} from day ${day}: harm is expected there (common practice), and warm water holds less oxygen.`,
  },
  tooFast: (change: string, day: string, limit: string) =>
    `Alkalinity moves by ${change} within a day (day ${day}); your limit is ${limit}.`,
  nothingDissolved: 'Nothing is dissolved in the top-off yet: set “Strength of the mix”.',
  noCycle:
    'This plan has no steady daily cycle: CO₂ leaves faster than the room brings it. The trial starts in balance with the room instead.',
  fromDay: (day: string, what: string) => `From day ${day}: ${what}.`,
  pumpTooSlow: (name: string, wanted: string, given: string) =>
    `“${name}” is too slow for its hours: of ${wanted} mL a day it gives ${given}. Give it more hours, or measure its flow.`,
  foodTakesMore: (used: string, typed: string) =>
    `Food and nitrate alone take ${used} a day, more than the ${typed} typed as use: corals take nothing in this trial. Type what the tests show, or feed less.`,
  slowing: (last: string, unit: string, first: string) =>
    `Corals slow down as saturation falls: the tank uses ${last} ${unit} a day at the end, ${first} at the start.`,
  climbing: (first: string, last: string, unit: string) =>
    `Use climbs from ${first} to ${last} ${unit} a day.`,
  limewater: {
    restIsBrought: (rest: string) => `your pumps and water changes bring the other ${rest}.`,
    restIsMissing: (missing: string, sodaAshG: string) =>
      `another ${missing} must come from elsewhere, for instance ${sodaAshG} g of soda ash a day with its calcium.`,
    restIsPartlyMissing: (missing: string, dosed: string, sodaAshG: string) =>
      `another ${missing} beside the ${dosed} dosed must come from elsewhere, for instance ${sodaAshG} g of soda ash a day with its calcium.`,
    carries: (litres: string, carried: string, used: string, rest: string) =>
      `${litres} a day of saturated limewater carry ${carried} of the ${used} used on the first day; ${rest}`,
    couldCarry: (litres: string, most: string, used: string) =>
      `${litres} a day of saturated limewater could carry ${most} a day, and ${used} are used.`,
    co2Supply: (ph: string) =>
      `CO₂ supply binds limewater: the room’s air cannot feed this much hydroxide, and pH passes your ${ph}. More aeration, or part of the dose as bicarbonate, lowers it.`,
    saturation: (most: string, rest: string) =>
      `Saturation binds limewater: water holds no more than ${most} g/L. ${rest}`,
    evaporation: (rest: string) => `Evaporation binds limewater. ${rest}`,
    strength: (brought: string, strength: string, rest: string) =>
      `The strength of the mix binds limewater: it brings ${brought} a day at ${strength} g/L. ${rest}`,
    tooMuch: (brought: string, used: string) =>
      `More is dosed than is used: limewater brings ${brought} a day, the tank uses ${used}.`,
    tooMuchTogether: (brought: string, others: string, used: string) =>
      `More is dosed than is used: limewater brings ${brought} a day and other sources ${others}, the tank uses ${used}.`,
    broughtTogether: (brought: string, others: string, used: string) =>
      `Limewater brings ${brought} a day and other sources ${others}, of ${used} used on the first day.`,
    nothingBinds: (brought: string, litres: string) =>
      `Limewater carries the use: ${brought} a day in ${litres} of top-off; nothing binds it yet.`,
    settles: (weighed: string, undissolved: string) =>
      `Of the ${weighed} g/L you weigh in, ${undissolved} stay undissolved on the bottom.`,
  },
  change: {
    setMixIn: (gramsPerL: string, litres: string, days: number) =>
      `Set the mix to ${gramsPerL} g/L, no more than ${litres} L of it, refilled every ${days === 1 ? 'day' : `${days} days`}`,
    setMix: (gramsPerL: string) => `Set the mix to ${gramsPerL} g/L`,
    refillEvery: (count: string) => `Refill every ${count} ${days(count)}`,
  },
  reservoir: {
    refillEvery: (count: string) =>
      `Set “Refilled every” to ${count} ${days(count)} or less. A larger one would last longer, and bring more if its pump sticks: rehearse that first.`,
    notADay:
      'It does not last a day: refill it more often. A larger one would last longer, and bring more if its pump sticks: rehearse that first.',
    emptied: (day: string, hours: string) =>
      `The failure empties the reservoir on day ${day}; it stands empty for ${hours} hours of the trial.`,
    runsDry: (day: string, hours: string, often: string) =>
      `The reservoir runs dry on day ${day} and stands empty for ${hours} hours of the trial: salinity climbs and nothing is dosed from it meanwhile. ${often}`,
  },
  supplies: {
    reservoir: (count: string) => `a full reservoir lasts ${count} days`,
    calciumHydroxide: (grams: string) => `${grams} g of calcium hydroxide a month`,
    salt: (kilograms: string) => `${kilograms} kg of salt a month`,
    all: (what: string) => `It uses up: ${what}.`,
  },
};
