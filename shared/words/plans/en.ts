/** More mornings than this go on past the first test by days. */
const FEW = 4;
const testsOn = (mornings: number): string =>
  mornings > FEW ? 'on day 3 and every second day after it' : 'on day 3';

export const en = {
  ways: {
    limewater: 'Limewater first',
    twoPart: 'Two-part pumps',
    changesAlone: 'Water changes alone',
    changesOtherSalt: 'Water changes, another salt',
    partOne: 'part one: carbonate',
    partTwo: 'part two: calcium',
    aiming: (way: string, dkh: string) => `${way}, ${dkh} dKH`,
  },
  panel: {
    title: 'A plan that holds it',
    work: 'Work out three plans',
    trying:
      'Trying doses on the simulated tank: three ways, each replayed for weeks. It takes some seconds…',
    progress: 'Plans are being worked out',
    stop: 'Stop',
    forUse: (use: string, by: string, target: string) =>
      `For ${use} ± ${by} dKH a day, to hold ${target} dKH.`,
    forTypedUse: (use: string, by: string, target: string) =>
      `For ${use} ± ${by} dKH a day, to hold ${target} dKH. Nobody has measured that use: it is the bench’s, taken to be right to a fifth. Test more before you trust it.`,
    trouble: (why: string) => `No plan could be made: ${why}`,
    before: 'Before you mix',
    runsBy: (plan: string) =>
      `Your tank runs by “${plan}” from now on, and the log is read so from today. “Run by this again” above takes it back.`,
    gettingThere: (plan: string) => `Getting there: ${plan}`,
    tryingCorrections: 'Trying corrections…',
    raisedWith: 'A low reading is raised with',
    bicarbonate: 'bicarbonate (pH hardly moves)',
    soda: 'soda ash (pH rises)',
  },
  offer: {
    promised: (low: string, high: string, days: number) =>
      `Inside your ${low}–${high} dKH and your other limits for ${days} days at every consumption that the log allows.`,
    promisedBut: (low: string, high: string, days: number, what: string) =>
      `Inside your ${low}–${high} dKH for ${days} days at every consumption that the log allows. Outside your limits as the tank runs today, and no farther out with it: ${what}.`,
    testBy: (days: number) =>
      `Test again by day ${days}, even if the log’s next test is later: nothing is promised beyond it.`,
    onTarget: (target: string, within: string, inHundred: number) =>
      `With nobody testing again, every day from the first week to the fourth stays within ${within} dKH of ${target} in about ${inHundred} of 100 such tanks: test when the log says, and turn by it.`,
    breaks: (what: string, value: string, limit: string, day: string) =>
      `Not offered: at a consumption that the log allows, ${what} reaches ${value} (your limit ${limit}), first on day ${day}.`,
    offTarget: (ends: string, target: string) =>
      `Not offered: it ends at ${ends} dKH, not at ${target}.`,
    dumpHarms: (harm: string) =>
      `That is past pH ${harm}, which harms: two independent stops on the pump, tested.`,
    noMoreThan: (litres: string) =>
      `No more than ${litres} L of it may stand in the reservoir: all of that at once stays below the pH that harms and your highest alkalinity.`,
    dumpAbove: (high: string) =>
      `That is above your ${high}, though below the pH that harms: two independent stops on the pump, tested.`,
    dump: 'Not offered: if the top-off sticks, its own reservoir takes the tank past the pH that harms, or past your highest alkalinity.',
    keepsFor: (days: number) =>
      `It keeps every limit for ${days === 1 ? '1 day' : `${days} days`}.`,
    wayOut:
      'Hold a value farther from your limits, move the limits (on the bench, “Your limits”), or test more first, so that the consumption is known better.',
    wayOutChanges: 'Change less water and let one of the other plans bring the rest.',
    wayOutDump: 'Take a weaker mix or a smaller reservoir, and bring the rest with pumps.',
    nearest: {
      knownUse: (by: string) =>
        `It would do if the consumption were known to ± ${by} dKH a day: test more first.`,
      target: (dkh: string, by: string) =>
        `It would do at ${dkh} dKH, with the consumption known to ± ${by} dKH a day.`,
      roomCo2: (ppm: string) =>
        `It would do with ${ppm} ppm CO₂ in the room or less: open the windows, or let the skimmer draw outside air.`,
      otherWay: (title: string) => `“${title}” is offered.`,
    },
    mix: 'Mix',
    dose: 'Dose',
    nothing: 'Nothing.',
    ifStuck: (hour: number, ph: string, dkh: string) =>
      `If the top-off sticks and all of the reservoir goes in (worst at ${hour}:00): pH ${ph}, ${dkh} dKH.`,
    ifPumpSticks: (
      name: string,
      dkh: string,
      high: string,
      minutes: string,
      ml: string,
      days: string,
    ) =>
      `If the pump of “${name}” sticks on, alkalinity passes your ${high} dKH after ${minutes} min of running and ends at ${dkh} dKH with the bottle empty. Never more than ${ml} mL (${days} days of dosing) in it, and even that stays below.`,
    rehearse: 'Rehearse it',
    monthly: (all: string) => `A month uses up: ${all}.`,
    noneMonthly: 'A month uses up: nothing.',
    whatElse: 'What else the trial says',
    choose: 'Get there with this',
    toBench: 'Take to the bench',
    card: 'Make the card',
    runBy: 'My tank runs by this from now on',
    taken: (plan: string) => `Taken from now on: ${plan}`,
    forItsCard: 'Choose “Get there with this” for its card, or to run by it.',
    full: 'The bench is full: remove a trial there first.',
  },
  correction: {
    none: (now: string) => `The water stands at ${now} dKH, where it should be: no correction.`,
    handStops: (doses: string) =>
      `The plan stands in for what your log shows you pouring in by hand (${doses}): stop that on the day on which you begin it.`,
    noReading: 'No alkalinity reading yet: the first one says whether anything is to be corrected.',
    risesTooFast: (now: string, target: string, most: string) =>
      `From ${now} to ${target} dKH it rises by more than your ${most} dKH a day by the plan’s dosing alone: begin with half of that, pour nothing in besides, and test every day.`,
    fallsTooFast: (now: string, target: string, most: string) =>
      `From ${now} to ${target} dKH it falls by more than your ${most} dKH a day even with all of the plan’s dosing: begin with all of it, and test every day.`,
    tooHighPh: (now: string, target: string, additive: string, limit: string) =>
      `No daily dose of ${additive} gets from ${now} to ${target} dKH without lifting pH above your ${limit}: raise it with sodium bicarbonate, which lifts it less.`,
    tooHighPhAnyway: (now: string, target: string, limit: string) =>
      `On the way from ${now} to ${target} dKH pH passes your ${limit} whatever is poured in: fresher air, or a lower target, comes first.`,
    rises: (now: string, target: string, days: number, largest: string) =>
      `The plan’s own dosing brings it from ${now} to ${target} dKH within ${days === 1 ? '1 day' : `${days} days`}: pour nothing in. It moves by at most ${largest} dKH in a day.`,
    raise: (now: string, target: string, dose: string, days: number) =>
      `Start the plan’s dosing today. Besides it, from ${now} to ${target} dKH: ${dose} on ${days === 1 ? 'the first morning' : `each of the first ${days} mornings`}, dissolved and poured in slowly. Besides the tests that are due anyway, test before the first pour and ${testsOn(days)}; stop at ${target}.`,
    raiseOnce: (now: string, target: string, dose: string) =>
      `Start the plan’s dosing today. It stands at ${now} dKH, and ${target} is wanted: besides the dosing, ${dose} on the first morning, dissolved and poured in slowly; no more than that is known to be slow enough. Test before it and on the next morning, log both, and ask again.`,
    movesAnyway: (limit: string) =>
      `That is what it falls, or swings by day and night, by itself; by the dose it rises by no more than your ${limit} dKH from one day to the next.`,
    ends: (giveOrTake: string, low: string, high: string) =>
      `If the consumption is off by ${giveOrTake} dKH a day, it stands anywhere from ${low} to ${high} afterwards: the test on day 3 tells.`,
    stopsShort:
      'More mornings than that might leave your band: test after them, and go on from what you read.',
    unsure: (now: string, target: string, giveOrTake: string) =>
      `From ${now} to ${target} dKH no dose can be named: the consumption is known to ± ${giveOrTake} dKH a day only, and if it is that much less, one dose already leaves your band. Begin the plan’s dosing, test tomorrow, and ask again.`,
    between: (from: string, to: string) => `${from} to ${to}`,
    orNever: (from: string) => `${from} or more`,
    raised: (largest: string, ph: string) =>
      `Alkalinity then moves by at most ${largest} dKH in a day; pH peaks at ${ph}.`,
    grams: (grams: string, additive: string) => `${grams} g of ${additive}`,
    doseNothing: 'dose nothing',
    goOn: (percent: number, what: string) =>
      `go on with ${percent} % of the dose (${what}), since without any it would fall faster than your daily limit`,
    tooSlow: (now: string, target: string, meanwhile: string) =>
      `First from ${now} to ${target} dKH: ${meanwhile}; it does not get there within two months. Change water with a salt that holds less.`,
    wait: (now: string, target: string, days: string, meanwhile: string, largest: string) =>
      `First from ${now} to ${target} dKH: wait about ${days} days and ${meanwhile}. It falls by at most ${largest} dKH in a day. Then begin.`,
  },
  dosing: {
    volume: (litres: string) => `${litres} L`,
    noTopOff: 'no top-off',
    plainTopOff: 'plain water in the top-off',
    topOff: (strength: string, additive: string) => `${strength} g/L ${additive} in the top-off`,
    litresADay: (litres: string) => `, ${litres} L a day`,
    doser: (ml: string, name: string) => `${ml} mL ${name} a day`,
    changes: (percent: string, days: number) => `${percent} % new water every ${days} days`,
  },
  recipe: {
    salts: { low: 'low-alkalinity mix', high: 'high-alkalinity mix' },
    scoops: (scoops: string, grams: string) => ` (${scoops} level scoops of ${grams} g)`,
    seaSalt: 'dry sea salt',
    powder: (grams: string, name: string) => `${grams} ${name}`,
    used: (name: string, grams: string) => `${name} ${grams}`,
    and: ' and ',
    mixTopOff: (powder: string, litres: string, perLitre: string) =>
      `Top-off: ${powder} in ${litres} L of pure water; afterwards ${perLitre} g for each litre that you fill up, no more. Let it settle, take the clear liquid, keep a lid on it.`,
    doseTopOff: (litres: string, days: number) =>
      `Top-off replaces what evaporates, about ${litres} L a day; refill ${days === 1 ? 'every day' : `every ${days} days`}.`,
    mixStock: (name: string, powders: string, litres: string) =>
      `Stock “${name}”: ${powders}, made up to ${litres} L with pure water.`,
    keepApart: (ml: string) =>
      `Keep it in a closed, labelled canister: no more than ${ml} mL of it at a time may stand at the pump.`,
    doseStock: (name: string, perDay: string, perHour: string) =>
      `${name}: ${perDay} mL a day (${perHour} mL an hour).`,
    doseStockByPump: (name: string, perDay: string, perHour: string, minutes: string) =>
      `${name}: ${perDay} mL a day (${perHour} mL an hour), ${minutes} minutes of your pump.`,
    change: (
      litres: string,
      percent: string,
      days: number,
      ppt: string,
      salt: string,
      grams: string,
    ) =>
      `Water change: ${litres} L (${percent} %) every ${days} days, mixed to ${ppt} ppt with ${salt} (about ${grams} of salt from the bag; weigh, then measure).`,
  },
};
