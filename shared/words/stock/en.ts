export const en = {
  panel: {
    title: 'Did it last as long as it should?',
    why: 'From how much a bottle or the top-off’s reservoir lost in some days: what was given against what is set. Read the level off twice, or count the days from full to empty.',
    vessel: 'Of',
    reservoir: 'the top-off’s reservoir',
    bottle: (name: string) => `the bottle of “${name}”`,
    used: (unit: string) => `went, ${unit}`,
    days: 'in, days',
    ask: 'Hold it against the plan',
    trying: 'Running the plan over the same days …',
    trouble: (why: string) => `It could not be worked out: ${why}`,
    tryIt: 'Try it on the bench as it truly runs',
    full: 'The bench is full: remove a trial there first.',
    none: 'Today’s plan has no dosing pump and no top-off.',
  },
  name: (vessel: string) => `As ${vessel} truly gives`,
  nothingSet: (vessel: string) =>
    `By today’s plan nothing goes out of ${vessel}: put the plan right on the bench first.`,
  pump: (name: string, ratio: string, low: string, high: string, given: string, set: string) =>
    `“${name}” gives ${ratio} times what it is set to (${low}–${high}): ${given} mL a day instead of ${set}.`,
  topOff: (ratio: string, low: string, high: string, given: string, set: string) =>
    `The top-off brings ${ratio} times what the plan reckons with (${low}–${high}): ${given} L a day instead of ${set}.`,
  asSet: (ratio: string, low: string, high: string) =>
    `No difference that these days can tell: ${ratio} times what is set, and anything from ${low} to ${high} is possible. A longer stretch would tell more.`,
  due: (litres: string, unit: string, setDays: string, days: string) =>
    `By the plan ${litres} ${unit} should last ${setDays} days; it was ${days}. A fill is taken to be known to 3 %, and the day to half a day.`,
  more: (by: string, giveOrTake: string, truly: string, read: string) =>
    `The log was read with too little coming in: the corals take ${by} ± ${giveOrTake} dKH a day more, ${truly} instead of ${read}.`,
  less: (by: string, giveOrTake: string, truly: string, read: string) =>
    `The log was read with too much coming in: the corals take ${by} ± ${giveOrTake} dKH a day less, ${truly} instead of ${read}.`,
  moreAssumed: (by: string, giveOrTake: string) =>
    `With it ${by} ± ${giveOrTake} dKH a day come in that the plan does not know of. Nobody has measured the use yet: wait for tests, or set it on the bench.`,
  lessAssumed: (by: string, giveOrTake: string) =>
    `With it ${by} ± ${giveOrTake} dKH a day are missing that the plan reckons with. Nobody has measured the use yet: wait for tests, or set it on the bench.`,
  calciumUp: (mg: string) =>
    `It brings no alkalinity; calcium rises by ${mg} mg/L a week beside what the plan says.`,
  calciumDown: (mg: string) =>
    `It brings no alkalinity; calcium falls by ${mg} mg/L a week beside what the plan says.`,
  pumpCause:
    'It is the pump, its hose, its setting, or a bottle that was not full: a dosing pump does not answer the tank, so thirstier corals change nothing in how long a bottle lasts.',
  jug: (set: string, would: string) =>
    `To be sure, run it into a measuring cylinder for a minute: ${set} mL would be as set, ${would} mL would explain it.`,
  jugSpread: (ml: string) =>
    `To be sure, run a day’s dose into a measuring cylinder: ${ml} mL would explain it.`,
  putRight: (given: string, set: string, right: string, goesOn: string) =>
    `The tank lives on what it truly gets. If you put the pump right, set it to ${given} mL a day: left at ${set}, alkalinity would stand at ${right} dKH after a week, instead of ${goesOn}.`,
  topOffCause: (share: string) =>
    `The top-off answers the level, so here it is the tank that is thirstier: ${share} % more evaporates than the plan has.`,
  topOffLess: (share: string) =>
    `The top-off answers the level, so here it is the tank that is less thirsty: ${share} % less evaporates than the plan has.`,
  leak: (ppt: string) =>
    `Unless tank water is lost (a leak, salt creep, a wet skimmer): then salinity falls by about ${ppt} ppt a week. Measure it; vapour leaves the salt behind.`,
  byHand:
    'Unless somebody topped up by hand, or the sensor calls later than it should: see that the level stands at its mark.',
  runsOut: {
    reservoir: 'the reservoir',
    bottle: (name: string) => `the bottle of “${name}”`,
    by: (what: string, date: string, days: number, asSet: string) =>
      `Runs out first: ${what}, ${days === 0 ? 'today' : days === 1 ? 'in a day' : `in ${days} days`} at the soonest (${date}; as set ${asSet}).`,
    since: (what: string, date: string) =>
      `Runs out first: ${what} may be empty since ${date}: look, and count or fill it.`,
  },
  orders: {
    title: 'When to order',
    why: 'What you have left of what the tank uses up, and by when to order so that it comes before it may run out. Type what is left (“450 g”, “3 kg”); it is counted from that day on.',
    salt: 'salt mix',
    tests: 'alkalinity tests in the kit',
    left: (what: string, unit: string) =>
      unit === '' ? `Left: ${what}` : `Left, ${unit}: ${what}`,
    shop: 'An order takes, days',
    trying: 'Running the plan for two weeks …',
    nothing: 'Today’s plan uses up no powder and no salt.',
    uses: (perDay: string, perMonth: string, least: string, most: string) =>
      `${perDay} g a day, ${perMonth} g a month (${least}–${most} g a day)`,
    /** So little a day that no scale shows it. */
    usesLittle: (perMonth: string, least: string, most: string) =>
      `${perMonth} g a month (${least}–${most}); a day’s share is less than a scale shows: it is weighed by the bottle`,
    /** What lasts so long is no date. */
    lasts: (years: number) =>
      `No order yet: at the most it may go in a day it lasts ${years} years.`,
    usesTests: (perWeek: string, least: string, most: string) =>
      `${perWeek} a week by the log (${least}–${most})`,
    notCounted: 'Not counted yet.',
    by: (day: string, soonest: string, latest: string, asSet: string) =>
      `Order by ${day}: it may run out between ${soonest} and ${latest}, on ${asSet} as set.`,
    now: (soonest: string, latest: string, asSet: string) =>
      `Order now: it may run out between ${soonest} and ${latest}, on ${asSet} as set.`,
    outAlready: (since: string) => `Order now: it may have run out since ${since}. Count again.`,
    never: 'not at all',
    counted: (day: string) => `Counted on ${day}.`,
    doubt:
      'The range is that of 20 % more or less from each pump, 40 % of evaporation and 20 % of the volume that is changed (common practice, two standard errors), with each powder turned to follow the use to the ends of its doubt; tests by how often the log has them, weekly at least. Corals that grow take more: count again each month.',
  },
};
