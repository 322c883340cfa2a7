import { timesADay } from '../timesADay';
/** More mornings than this go on past the first test by days. */
const FEW = 4;
const testsOn = (mornings: number): string =>
  mornings > FEW ? 'on day 3 and every second day after it' : 'on day 3';

export const en = {
  panel: {
    title: 'What to turn',
    trying: 'Turning what you have on the simulated tank…',
    trouble: (why: string) => `No turn could be worked out: ${why}`,
    tryIt: 'Try it on the bench',
    runBy: 'My tank runs by this from now on',
    runsBy: 'Your tank runs by it from now on. “Run by this again” above takes it back.',
    full: 'The bench is full: remove a trial there first.',
    more: 'Grams, limits, and if a pump sticks',
    notOwn: (plan: string) => `Reckoned for ${plan}. You have not called that your tank:`,
    putRight: 'put it right first.',
    mix: 'Mix',
    dose: 'Dose, once it holds',
    dates: 'By a date',
    within: 'There within, days',
    when: 'When does it stand at, dKH?',
  },
  name: (target: string) => `Turned for ${target} dKH`,
  fallName: (target: string) => `Down to ${target} dKH`,
  raisedName: (target: string) => `Raised to ${target} dKH`,
  nothingRuns:
    'Today’s plan brings no alkalinity, so there is nothing to turn: the three plans (under “Plans”) begin one, and how the water gets there first stands under them.',
  nothingRunsBeside:
    'Today’s plan brings no alkalinity, so it falls again: begin one of the three plans (under “Plans”). What is poured in first with a plan stands under them, and goes in instead of this, not besides.',
  noReading: 'No alkalinity reading yet: a turn begins from one. Type today’s first.',
  assumed: (use: string, by: string) =>
    `How far to turn is not known yet: nobody has measured the use, ${use} ± ${by} dKH a day is the plan’s own, taken to be right to a fifth. Leave what runs as it is until two tests some days apart tell.`,
  raise: (now: string, target: string, dose: string, mornings: number) =>
    `From ${now} to ${target} dKH, with what runs left as it is: pour in ${dose} on ${mornings === 1 ? 'the first morning' : `each of the first ${mornings} mornings`}, dissolved and slowly. Test before the first pour and ${testsOn(mornings)}; stop at ${target}.`,
  raiseOnce: (now: string, target: string, dose: string) =>
    `It stands at ${now} dKH, and ${target} is wanted. With what runs left as it is, pour in ${dose} on the first morning, dissolved and slowly: no more than that is known to be slow enough. Test before it and on the next morning, log both, and go on by what is told then.`,
  raiseHolds: (low: string, high: string, largest: string, ph: string) =>
    `To raise it no exact use is needed: at any from ${low} to ${high} dKH a day it moves by at most ${largest} dKH in a day, and pH peaks at ${ph}.`,
  raiseAssumed: (low: string, high: string, largest: string, ph: string) =>
    `Nobody has measured the use yet: from ${low} to ${high} dKH a day is the plan’s own, give or take a fifth. At any of that it moves by at most ${largest} dKH in a day, and pH peaks at ${ph}; corals that take less are there sooner, and your tests tell.`,
  fall: {
    nothing: 'dose nothing, plain water in the top-off,',
    goOn: (what: string) => `dose less (${what})`,
    waits: (
      ...[now, target, soonest, latest, meanwhile, largest]: [
        now: string,
        target: string,
        soonest: number,
        latest: number | undefined,
        meanwhile: string,
        largest: string,
      ]
    ) =>
      `From ${now} down to ${target} dKH: ${meanwhile} for ${latest === undefined ? `${soonest} days or more` : soonest === latest ? `about ${soonest === 1 ? 'a day' : `${soonest} days`}` : `${soonest} to ${latest} days`}, and test every day; it falls by at most ${largest} dKH in a day. At ${target} go on as before: what then holds it follows from those tests.`,
    tooSlow: (now: string, target: string) =>
      `From ${now} to ${target} dKH it does not come down within two months, with nothing dosed: change water with a salt that holds less.`,
  },
  /** Beside a way down that needs no exact use. */
  assumedFall: (use: string, by: string) =>
    `How far to turn for good is not known yet: nobody has measured the use, ${use} ± ${by} dKH a day is the plan’s own, taken to be right to a fifth. The tests on the way down tell.`,
  stray: (newest: string, level: string, by: string) =>
    `The newest reading, ${newest} dKH, does not fit the ${level} ± ${by} dKH that the readings before it lead to. Test the same water again today, before you turn anything or pour anything in: log what it reads, and the rest follows from that.`,
  tooHigh: (high: string) =>
    `It stands above your ${high} dKH: add nothing by hand that brings alkalinity, and no acid against it. Corals bring it down by what they use, and water changes do with a salt that holds less. Test every day.`,
  torn: (level: string, by: string) =>
    `The readings disagree: where the water stands is known no better than ${level} ± ${by} dKH. Test the same water twice before you turn anything.`,
  leapt:
    'Turn nothing and pour nothing in yet: what moved the water at once between two readings is not in the log, and may do so again. Look for it and type it in, or test on: with three readings since, it goes by them.',
  testFirst: (date: string) =>
    `The newest reading is of ${date}, and the next test is overdue: test first, the rest follows from it.`,
  turnedSince: (turned: string, read: string) =>
    `What runs was turned on ${turned}, by the reading of ${read}: what goes with it, poured or later, stands in the log’s notes. Test first; the next turn follows from that.`,
  /** Written into the log when a turn is run by. */
  noted: (turn: string) => `Turned: ${turn}`,
  byThatReading: (turn: string) => `By that reading it would have been: ${turn}`,
  byThatLevel: (turn: string) => `From that level it would be: ${turn}`,
  byThatUse: (turn: string) => `By that use it would be: ${turn}`,
  handGoesOn: (doses: string) =>
    `What your log shows you pouring in by hand (${doses}) goes on: it was reckoned with.`,
  handInParts: (parts: string, before: string) =>
    `What you pour in by hand moves the water faster than your limits allow by itself. Go on with it in smaller parts: ${parts} instead of ${before}.`,
  handNoted:
    'Write each pour into the log with its grams: what comes next is reckoned from what was poured.',
  fewPours:
    'What you poured in by hand is no rhythm yet that could be turned: that takes three pours, each written down with its grams.',
  handPauses: 'Pour nothing in by hand either until then.',
  turn: {
    pump: (name: string, from: string, to: string) =>
      `Turn “${name}” from ${from} to ${to} mL a day`,
    pumpFirst: (name: string, from: string, less: string, days: number, to: string) =>
      `Turn “${name}” from ${from} to ${less} mL a day for ${days === 1 ? 'a day' : `${days} days`}, then to ${to}`,
    with: (name: string, to: string) => `“${name}” with it to ${to}`,
    withFirst: (name: string, less: string, to: string) =>
      `“${name}” with it to ${less}, then ${to}`,
    mix: (from: string, to: string) =>
      `Mix the top-off with ${to} g/L instead of ${from}: empty the reservoir and fill it anew`,
    mixFirst: (from: string, less: string, days: number, to: string) =>
      `Mix the top-off with ${less} g/L instead of ${from} for ${days === 1 ? 'a day' : `${days} days`}, then with ${to}: empty the reservoir and fill it anew each time`,
    drip: (from: string, to: string) =>
      `Turn the drip of the calcium reactor from ${from} to ${to} L an hour`,
    dripFirst: (from: string, less: string, days: number, to: string) =>
      `Turn the drip of the calcium reactor from ${from} to ${less} L an hour for ${days === 1 ? 'a day' : `${days} days`}, then to ${to}`,
    hand: (additive: string, rhythm: string, from: string, to: string) =>
      `Pour in ${to} g of ${additive} ${rhythm} instead of ${from} g`,
    handFirst: (
      ...[additive, rhythm, from, less, days, to]: [string, string, string, string, number, string]
    ) =>
      `Pour in ${less} g of ${additive} ${rhythm} for ${days === 1 ? 'a day' : `${days} days`}, then ${to} g, instead of ${from} g`,
    handBefore: (from: string, additive: string, rhythm: string) =>
      [`${from} g`, additive && `of ${additive}`, rhythm].filter(Boolean).join(' '),
    handInstead: (additive: string, rhythm: string, before: string, to: string) =>
      `Pour in ${to} g of ${additive} ${rhythm} instead of ${before}`,
    handInsteadFirst: (
      ...[additive, rhythm, before, less, days, to]: [
        string,
        string,
        string,
        string,
        number,
        string,
      ]
    ) =>
      `Pour in ${less} g of ${additive} ${rhythm} for ${days === 1 ? 'a day' : `${days} days`}, then ${to} g, instead of ${before}`,
    handLater: (additive: string, rhythm: string, days: number, to: string) =>
      `Pour in no ${additive} for ${days === 1 ? 'a day' : `${days} days`}, then ${to} g ${rhythm}`,
    handStops: (additive: string, from: string) =>
      `Pour in no more ${additive} by hand (${from} g until now)`,
    rhythm: (days: number) =>
      days === 1 ? 'each day' : days > 1 ? `every ${days} days` : timesADay(days),
    channel: (name: string, other: string, to: string) =>
      `Leave what runs as it is, and add one more channel: “${name}” and “${other}”, ${to} mL a day each`,
    channelFirst: (name: string, other: string, less: string, days: number, to: string) =>
      `Leave what runs as it is, and add one more channel: “${name}” and “${other}”, ${less} mL a day each for ${days === 1 ? 'a day' : `${days} days`}, then ${to}`,
    channelLater: (name: string, other: string, days: number, to: string) =>
      `Leave what runs as it is for ${days === 1 ? 'a day' : `${days} days`} while the water falls, then add one more channel: “${name}” and “${other}”, ${to} mL a day each`,
    leavePump: (name: string, from: string) => `Leave “${name}” at ${from} mL a day`,
    leaveMix: (from: string) => `Leave the top-off at ${from} g/L`,
    leaveDrip: (from: string) => `Leave the drip of the calcium reactor at ${from} L an hour`,
    leaveHand: (additive: string, rhythm: string, from: string) =>
      `Go on pouring in ${from} g of ${additive} ${rhythm}`,
    arrives: (level: string, target: string, days: number) =>
      `${level} → ${target} dKH in ${days === 1 ? '1 day' : `${days} days`}`,
    near: (level: string, target: string) => `${level} dKH is close to ${target}`,
    holds: (level: string, target: string) => `${level} dKH is held at ${target}`,
    range: (low: string, high: string, unit: string) => `range ${low}–${high} ${unit}`,
    units: {
      pump: 'mL a day',
      channel: 'mL a day',
      mix: 'g/L',
      drip: 'L an hour',
      hand: 'g each time',
    },
  },
  whyNotOwn: {
    dump: (litres: string) =>
      `A stronger mix is not offered: if the top-off sticks, all of the reservoir takes the tank past the pH that harms, or past your highest alkalinity; with no more than ${litres} L of it there it would not.`,
    outOfReach: (rests: string) =>
      `What runs already, turned as far as it goes, brings the water to rest at ${rests} dKH.`,
    breach: (what: string, value: string, limit: string, day: string) =>
      `Turning what runs already is not offered: at a use that the log allows, ${what} reaches ${value} (your limit ${limit}), first on day ${day}.`,
  },
  unlinked: (pumps: string, calcium: string, together: string, day: number) =>
    `The bottles are unlinked: ${pumps}. Calcium then stands at ${calcium} mg/L on day ${day}; turned together it would be ${together}.`,
  unlinkFirst: (calcium: string, limit: string) =>
    `Calcium was read at ${calcium} mg/L, above your ${limit}: untick “Turn the bottles of a pair together”, and the bottle that brings it stays as it is.`,
  stays: (name: string, ml: string) => `“${name}” stays at ${ml} mL a day`,
  link: 'Turn the bottles of a pair together',
  linkWhy:
    'Unticked, only the bottle that brings alkalinity is turned: what the other brings stays, and calcium goes its own way.',
  steer: {
    title: 'Calcium, magnesium and salinity with it',
    trying: 'Calcium, magnesium and salinity are run with it…',
    above: (what: string, level: string, limit: string) =>
      `${what} stands at ${level}, above your ${limit}.`,
    below: (what: string, level: string, limit: string) =>
      `${what} stands at ${level}, below your ${limit}.`,
    rises: (what: string, limit: string, day: number) =>
      `${what} rises past your ${limit} on day ${day} as the tank runs.`,
    falls: (what: string, limit: string, day: number) =>
      `${what} falls below your ${limit} on day ${day} as the tank runs.`,
    testFirst: 'Test it with alkalinity: what to add follows from that.',
    asOne: (days: number, most: string) =>
      `Begin with the turn: both were run as one for ${days} days, at every use that the log allows, and alkalinity moves by at most ${most} dKH in a day.`,
    alone: (days: number, most: string) =>
      `Run for ${days} days at every use that is thought possible: alkalinity moves by at most ${most} dKH in a day.`,
    ends: (calcium: string, magnesium: string, salinity: string) =>
      `Once it is done the water then holds ${calcium} mg/L calcium, ${magnesium} mg/L magnesium and ${salinity} ppt.`,
    stillOutside: (what: string, end: string) =>
      `${what} is then still outside your limit of ${end}: that is a part of the way only. Test again by then, and go on from what it reads.`,
    lower: (by: string, than: string) =>
      `Alkalinity ends ${by} dKH lower by it than ${than}: with more calcium corals take more. Your tests tell.`,
    higher: (by: string, than: string) =>
      `Alkalinity ends ${by} dKH higher by it than ${than}. Your tests tell.`,
    thanTurn: 'by the turn alone',
    thanNow: 'as the tank runs',
    sooner: {
      above: (what: string, limit: string, day: number) =>
        `${what} is above your ${limit} by it from day ${day} on: test it by then.`,
      below: (what: string, limit: string, day: number) =>
        `${what} is below your ${limit} by it from day ${day} on: test it by then.`,
    },
    passes: (what: string, value: string, limit: string, day: string) =>
      `With it ${what} may pass your limit of ${limit} on day ${day} and go to ${value}, at the use that is worst for it: test before, and turn again.`,
    careful:
      'Dissolve each salt by itself, and pour none within an hour of bicarbonate or carbonate: together they fall out as chalk. Goggles for calcium chloride: it gets hot in water and irritates eyes.',
    noWayBeside:
      'How it comes down changes with this turn: turn first, test it again, and look at the season then.',
  },
  pour: (dose: string, mornings: number) =>
    `Besides, pour in ${dose} on ${mornings === 1 ? 'the first morning' : `each of the first ${mornings} mornings`}, dissolved and slowly. Besides the tests named above, test before the first pour and ${testsOn(mornings)}; stop at the target.`,
  grams: (grams: string, additive: string, litres: string) =>
    `${grams} g of ${additive} (for ${litres} L)`,
  scoops: (scoops: string) => ` (${scoops} level scoops)`,
  about: (level: string) => `At every use that the log allows it then stands at ${level} dKH.`,
  between: (low: string, high: string) =>
    `At every use that the log allows it is then between ${low} and ${high} dKH.`,
  moves: (largest: string, limit: string, ph: string) =>
    `Alkalinity moves by at most ${largest} dKH in a day (your limit ${limit}); pH peaks at ${ph}.`,
  swings: (largest: string, limit: string, ph: string) =>
    `Light and dark alone move alkalinity by more than your ${limit} dKH in a day, as the tank runs today too; the turn makes it at most ${largest}. pH peaks at ${ph}.`,
  promised: (low: string, high: string, days: number) =>
    `Inside your ${low}–${high} dKH from then on, until day ${days} at every use that the log allows.`,
  onItsWay: (days: number) =>
    `It is on its way until then: until day ${days} no limit is passed farther than if you turn nothing, at every use that the log allows.`,
  endedBy: (what: string, value: string, limit: string, day: string) =>
    `It ends there because ${what} passes your limit of ${limit} on day ${day} and goes to ${value}: look at that before.`,
  also: (what: string, value: string, limit: string, day: string) =>
    `${what} passes your limit of ${limit} on day ${day} and goes to ${value}, as it does if you turn nothing: that needs something of its own.`,
  unread: (what: string) =>
    `Nobody has read ${what}: the plan’s number stands for it. Test it with alkalinity next time; what is said of it follows from that.`,
  refused: {
    untold:
      'No turn is offered: these readings rise by more than is dosed and do not tell what the tank uses. Look first whether a pump ran on and how far its bottle has fallen, whether something was poured in that the log does not have (type it in), and whether the test is from a new bottle.',
    outOfReach: (target: string, rests: string) =>
      `No turn: nothing that runs, nor one more channel, holds ${target} dKH; the nearest it comes to rest is ${rests}.`,
    breach: (what: string, value: string, limit: string, day: string) =>
      `No turn is offered: at a use that the log allows, ${what} reaches ${value} (your limit ${limit}), first on day ${day}.`,
    offTarget: (ends: string, target: string) =>
      `No turn is offered: what would hold ${target} dKH now has drifted to ${ends} after four weeks.`,
    dump: (litres: string) =>
      `No turn is offered: if the top-off sticks, a reservoir of the stronger mix takes the tank past the pH that harms, or past your highest alkalinity. No more than ${litres} L of it may stand there.`,
    knownUse: (by: string) =>
      `It would do if the use were known to ± ${by} dKH a day: test more first.`,
    target: (dkh: string) => `It would do for ${dkh} dKH.`,
    limit: (dkh: string) =>
      `It would do with ${dkh} dKH a day as your limit (on the bench, “Your limits”); spreading the dose over the lit hours makes the day’s swing smaller.`,
    calcium:
      'Calcium runs out as the tank runs now, and corals that lack it take less alkalinity: bring calcium as well, as a pair of pumps does (one of the three plans, under “Plans”), and then turn.',
    threePlans: 'The three plans (under “Plans”) begin anew and may do it.',
    test: 'Until then change nothing at once, and test every day.',
  },
  byDay: {
    inTime: (target: string, days: number, asked: string) =>
      `Yes: at ${target} dKH after ${days === 1 ? '1 day' : `${days} days`}, within the ${asked} asked for.`,
    late: (target: string, days: number, asked: string, at: string) =>
      `Not within ${asked} days inside your daily limit: it then stands at ${at} dKH, and at ${target} after ${days}.`,
  },
  reaches: {
    on: (dkh: string, days: number) =>
      `As the tank runs now it stands at ${dkh} dKH in about ${days === 1 ? '1 day' : `${days} days`}`,
    within: (soonest: number, latest: number) =>
      `, in ${soonest === latest ? String(soonest) : `${soonest} to ${latest}`} at every use that the log allows.`,
    orNever: (soonest: number) =>
      `, in ${soonest} at the soonest; at another use that the log allows never.`,
    never: (dkh: string, days: string, ends: string) =>
      `As the tank runs now it does not stand at ${dkh} dKH within ${days} days: it ends at ${ends}.`,
  },
};
