import { timesADay } from '../timesADay';
export const en = {
  fitted: {
    use: 'Consumption at the start of the log',
    growth: 'Growth of consumption',
    start: 'Alkalinity at the start of the log',
    lnKLa: 'Gas exchange, logarithm of kLa in 1/h',
    gross: 'Carbon fixed in the light',
    phOffset: 'Offset of the pH probe',
    corals: (date: string) => `Use from ${date} on, against before`,
    leap: (date: string) => `Stands elsewhere at once, read on ${date}`,
    lot: (name: string) => `Lot ${name} against the first`,
    nameless: 'without a name',
  },
  tooLittle: {
    none: 'No alkalinity reading so far: two, a day or more apart, begin to tell the consumption.',
    one: 'One alkalinity reading so far: two, a day or more apart, begin to tell the consumption.',
    tooClose: (hours: string) =>
      `All readings lie within ${hours} hours: one a day or more after the first begins to tell the consumption.`,
    twoTests: (days: string, within: string, sigma: string) =>
      `Two tests ${days} days apart know it to ±${within} dKH a day when the test strays by ${sigma} dKH (2 · σ · √2 ÷ ${within}).`,
  },
  tooLong:
    'it took longer than half a minute and was ended. Let the fit count from a later day, or look whether a date is mistyped.',
  tooFar: (days: string, first: string, last: string) =>
    `The readings span ${days} days, from ${first} to ${last}; at most two years are fitted. Is a date mistyped? Put it right in the log, or let the fit count from a later day.`,
  farAhead: (last: string, days: string) =>
    `The newest reading is dated ${last}, ${days} days after the one before it, so the readings before it do not count. If the date is mistyped, put it right in the log.`,
  notConverged:
    'No tank that runs by this plan fits these readings, so no number is given: check the volume, the dosing and the dates of the log, or let the fit count from a later day.',
  notes: {
    fewReadings: (count: number) =>
      `Only ${count} alkalinity readings: the line through them can hardly be checked against itself.`,
    noneAtAll: 'This consumption cannot be told apart from none at all yet.',
    grows: (percent: string, by: string) => `Consumption grows by ${percent} ± ${by} % a day.`,
    growthUnknown:
      'Growth cannot be told apart from steady consumption yet: your plan’s growth stands in, give or take 0.3 % a day (common practice).',
    gasUnknown: (kLa: string) =>
      `Gas exchange is not known from this log: your plan’s kLa of ${kLa} per hour stands in. Three readings of pH or more, some before lights-on and some before lights-off, would tell.`,
    gas: (kLa: string, low: string, high: string) =>
      `Gas exchange: kLa ${kLa} per hour, from ${low === high ? low : `${low} to ${high}`}.`,
    gasUntold:
      'The pH readings do not tell the gas exchange: your plan’s stands in, give or take a factor of two.',
    corals: (date: string, noted: string, share: string, by: string) =>
      `On ${date} you noted ${noted} % of corals: from then on the use is taken to be ${share} ± ${by} of what it was.`,
    lotStep: (lot: string, dkh: string, by: string) =>
      `${lot}: reads ${dkh} ± ${by} dKH. That step is not counted as consumption.`,
    lotSame: (lot: string, dkh: string, by: string) =>
      `${lot}: no step that can be told from chance (${dkh} ± ${by} dKH).`,
    scatter: (times: string) =>
      `The readings scatter ${times} times wider than their stated accuracy; every ± here is widened by that.`,
    fasterSince: (date: string, dkh: string) =>
      `From about ${date} the readings fall faster than this plan allows, by about ${dkh} dKH a day: is the pump running, the reservoir filled, the mix right? Corals rarely change so fast. If you changed the dosing, let the fit count from that day.`,
    slowerSince: (date: string, dkh: string) =>
      `From about ${date} the readings fall more slowly than before, by about ${dkh} dKH a day: was more dosed than you noted, were corals removed, or do they fare badly? If you changed the dosing, let the fit count from that day.`,
    mostUse: (most: string) =>
      `That is more than a plan can hold: plans reckon with ${most} dKH a day.`,
    doubts: (parts: string, together: string) =>
      `The ± is that of the readings. No reading checks what you typed; off as such numbers commonly are (common practice), ${parts}. With the readings’, and taken twice over as every ± here, that is ±${together} dKH a day.`,
    doubt: {
      volume: (by: string) => `a net volume off by 10 % moves the use by ${by}`,
      evaporation: (by: string) => `evaporation off by 20 % by ${by}`,
      limewater: (by: string) => `limewater off by 15 % in strength by ${by}`,
      delivery: (by: string) => `pumps off by 10 % by ${by}`,
    },
    oneFarOff:
      'One reading lies more than three standard errors off and is marked below. Nothing was left out: test again, or delete what you know to be wrong.',
    farOff: (count: number) =>
      `${count} readings lie more than three standard errors off and are marked below. Nothing was left out: test again, or delete what you know to be wrong.`,
    alwaysHigh:
      'A test that always reads the same amount too high does not move the consumption; one that reads 5 % too high makes it 5 % too high.',
  },
  answer: {
    title: 'What the log says',
    reasons: 'How sure, and what follows',
    use: (dkh: string, by: string, date: string) =>
      `The tank uses ${dkh} ± ${by} dKH a day on ${date}.`,
    useUntold: (dkh: string, by: string) =>
      `These readings do not tell what the tank uses: it would be less than nothing (${dkh} ± ${by} dKH a day). A reading is off, or more came in than today’s plan and the log have.`,
    ammonia: (total: string, date: string, toxic: string, ph: string, limit: string) =>
      `Of the ${total} mg/L total ammonia of ${date}, ${toxic} mg/L are un-ionised at pH ${ph}: that is what harms, and more than your ${limit} mg/L.`,
    ammoniaPh: (ph: string) => `${ph} (the top of your band; nobody has read it)`,
    readAgain: 'Read it once more, with a clean vial or a calibrated probe. If it stands:',
    firstHour: 'the first hour of a failure',
    /** What no reading checks: volume, evaporation, what is dosed. */
    withTyped: (by: string) =>
      `The ± of the use is by the readings alone; with volume, evaporation and dosing off as typed numbers commonly are, it is ± ${by}.`,
    level: (by: string) => `The readings neither rise nor fall, give or take ${by} dKH a day.`,
    fall: (dkh: string, by: string) => `The readings fall by ${dkh} ± ${by} dKH a day.`,
    rise: (dkh: string, by: string) => `The readings rise by ${dkh} ± ${by} dKH a day.`,
    drift: (from: string, to: string, by: string) =>
      `With today’s plan alkalinity goes from ${from} to ${to} ± ${by} dKH in a week.`,
    habit: (doses: string) => `The forecast goes on with ${doses}, as your log shows.`,
    leapUp: (before: string, after: string, dkh: string) =>
      `Between the readings of ${before} and ${after} alkalinity rose by ${dkh} dKH at once, beyond what the log’s lines explain: that is counted as water that stands higher, not as use. If something was poured in, type it in; if nothing was, look how far the bottles have fallen and test the same water from another kit.`,
    leaps: (count: number, low: string, high: string, before: string, after: string) =>
      `${count} times alkalinity stands elsewhere at once, by ${low === high ? low : `${low} to ${high}`} dKH, last between the readings of ${before} and ${after}, beyond what the log’s lines explain: that is counted as water that stands higher or lower, not as use. If something is poured in or changed again and again, type it in with its day: then the forecast goes on with it.`,
    leapDown: (before: string, after: string, dkh: string) =>
      `Between the readings of ${before} and ${after} alkalinity fell by ${dkh} dKH at once, beyond what the log’s lines explain: that is counted as water that stands lower, not as use. If water was changed, type it in; chalk on pumps and heater says that it fell out; if neither, test the same water from another kit.`,
    habitDose: (grams: string, additive: string, days: number) =>
      `${grams} g ${additive} ${days === 1 ? 'a day' : days > 1 ? `every ${days} days` : timesADay(days)}`,
    habitChange: (percent: string, days: number) => `${percent} % new water every ${days} days`,
    newestOutside: (quantity: string, value: string, date: string, band: string) =>
      `The newest reading of ${quantity}, ${value} on ${date}, is outside your ${band}.`,
    outsideNow: (band: string) => `It is outside your ${band} now.`,
    stays: (band: string) =>
      `It stays inside your ${band} for four weeks in nearly every fit that the log allows.`,
    aboutToFall: (band: string) => `It is about to leave your ${band}, below it.`,
    aboutToRise: (band: string) => `It is about to leave your ${band}, above it.`,
    leavesBelow: (band: string, percent: number) =>
      `It leaves your ${band} below with ${percent} % chance within four weeks.`,
    leavesAbove: (band: string, percent: number) =>
      `It leaves your ${band} above with ${percent} % chance within four weeks.`,
    leavesBelowBy: (band: string, percent: number, dates: string) =>
      `It leaves your ${band} below with ${percent} % chance within four weeks: ${dates}.`,
    leavesAboveBy: (band: string, percent: number, dates: string) =>
      `It leaves your ${band} above with ${percent} % chance within four weeks: ${dates}.`,
    oneInTen: (date: string) => `one chance in ten by ${date}`,
    even: (date: string) => `an even chance by ${date}`,
    reading: 'Reading the log…',
    trouble: (why: string) => `The log could not be matched: ${why}`,
    lastGood: 'What you see is the last match that worked.',
  },
  nextTest: {
    again: 'Test the same water again today: the newest readings do not agree with each other.',
    outside: 'Test every day, at the same hour, until alkalinity is back inside your limits.',
    overdue: (date: string) =>
      `A test was due by ${date}: test now, before you turn or dose anything by this log.`,
    known: (wanted: string) =>
      `The consumption is known to ${wanted} already. Test weekly, at the same hour (common practice).`,
    on: (date: string, wanted: string) =>
      `Test next on ${date}, at the same hour: with that the consumption is known to ${wanted}.`,
    onOrDaily: (date: string, wanted: string, days: number) =>
      `Test next on ${date}, at the same hour: with that the consumption is known to ${wanted}; a test every day gets there in ${days} days.`,
    beforeLeaving: (date: string) =>
      `Test next by ${date}, at the same hour: by then there is one chance in ten that alkalinity has left your limits.`,
    weekly: (date: string) => `Test next on ${date}, at the same hour: weekly is common practice.`,
    daily: (days: number, wanted: string) =>
      `One more test does not know the consumption to ${wanted}; a test every day does in ${days} days.`,
    notYet: (wanted: string) =>
      `Four weeks of daily tests would not know the consumption to ${wanted}: ask for less, or test with a finer kit.`,
    wanted: (within: string) => `±${within} dKH a day`,
  },
  table: {
    summary: 'What the log tells and what it cannot',
    fitted: 'Fitted',
    value: 'Value',
    standardError: 'Standard error',
    unit: 'Unit',
    how: 'The simulated tank is matched to the readings by weighted least squares; pumps and top-off run as in today’s plan, one-off doses and water changes as you logged them. A reading far off counts for little (Student’s t), and use and level may wander a little from day to day. The forecast goes on with today’s plan.',
  },
  settings: {
    countsFrom: 'The fit counts from',
    empty: (days: number) => `empty: the last ${days} days; set it when the dosing changed`,
    standsSince: (time: string) =>
      `The forecast stands since ${time}; later readings are held against it.`,
    again: 'Fit all readings again',
    letStand: 'Let this forecast stand',
    straying:
      'The latest readings keep straying to one side of the forecast: something has changed.',
  },
};
