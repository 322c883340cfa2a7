const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

export const en = {
  panel: {
    title: 'Season',
    why: 'Calcium, magnesium and salinity move over months. The log is gone through again by the plan in force, then the season ahead, from the newest readings.',
    back: 'Look back, days',
    calcium: 'Calcium to, mg/L',
    magnesium: 'Magnesium to, mg/L',
    mostTitle: 'At most a day',
    mostWhy: 'Common practice, no source; yours to change.',
    mostCalcium: 'Calcium, mg/L a day',
    mostMagnesium: 'Magnesium, mg/L a day',
    mostSalinity: 'Salinity, ppt a day',
    ask: 'Look over the season',
    trying: 'Going through the log again, and through the season ahead …',
    trouble: (why: string) => `It could not be worked out: ${why}`,
    tryIt: 'Try it on the bench',
    full: 'The bench is full: remove a trial there first.',
    caption: 'What moved, why, and what to add',
    quantity: 'Quantity',
    read: 'Read last',
    moved: 'Moved since',
    shares: 'Why, by the plan',
    add: 'Add',
    forDays: 'Mornings',
    more: 'The season ahead, and what was assumed',
  },
  name: 'Season',
  nothing: '–',
  movers: {
    growth: 'coral growth',
    chalk: 'chalk',
    pumps: 'dosing pumps',
    topOff: 'top-off mix',
    reactor: 'calcium reactor',
    byHand: 'added by hand',
    waterChanges: 'water changes',
    lost: 'water lost',
    level: 'more or less water, and small things',
  },
  share: (mover: string, moved: string) => `${mover} ${moved}`,
  readOn: (value: string, date: string) => `${value} (${date})`,
  movedCell: (read: string, by: string, date: string) => `${read} ± ${by} since ${date}`,
  planSays: (planned: string) => `by the plan ${planned}`,
  once: 'read once: a level, no slope',
  never: 'never read: the plan’s number',
  addCell: (grams: string, additive: string) => `${grams} g ${additive} each morning`,
  enough: 'nothing',
  highCell: 'too high: see below',
  testCell: 'after a test',
  refusedCell: 'not offered: see below',

  // The first sentence.
  rose: (what: string, by: string, date: string, cause: string) =>
    `${what} has risen by ${by} since ${date}, ${cause}.`,
  fell: (what: string, by: string, date: string, cause: string) =>
    `${what} has fallen by ${by} since ${date}, ${cause}.`,
  causeBy: (mover: string, moved: string) => `mostly by ${mover} (${moved})`,
  causeAgainst: (mover: string, moved: string, against: string, by: string) =>
    `mostly by ${mover} (${moved}) against ${against} (${by})`,
  causeUnknown: (planned: string) => `of which the plan explains ${planned}`,
  noCause: 'as the plan says',
  steady: 'No reading shows that calcium, magnesium or salinity moved by more than a kit can tell.',
  noPast:
    'Nothing of calcium, magnesium or salinity was read twice: there is a level, but no slope.',
  pour: (what: string, mornings: number) => `Add ${what} each morning for ${days(mornings)}.`,
  pourWith: (what: string, mornings: number, litres: string, salinity: string) =>
    `Add ${what} each morning for ${days(mornings)}, and change ${litres} L a day then with new water mixed to ${salinity} ppt.`,
  changeFirst: (mornings: number, litres: string, salinity: string) =>
    `For ${days(mornings)} change ${litres} L a day with new water mixed to ${salinity} ppt.`,
  grams: (grams: string, additive: string) => `${grams} g ${additive}`,
  noAdd: 'Nothing has to be added first.',
  thenMixed: (litres: string, salinity: string) =>
    `Then change ${litres} L a week with new water mixed to ${salinity} ppt.`,
  thenSame: (litres: string) => `Then go on with ${litres} L of new water a week, as you mix it.`,
  thenNone: 'Then no water has to be changed for it.',
  thenCannot: 'Nothing that was tried then holds salinity inside your limits.',

  // What differs from the plan, and what would tell.
  differs: (what: string, read: string, planned: string, by: string) =>
    `${what} was read to move by ${read}; the plan explains ${planned}, and a kit ${by} either way. What would tell:`,
  agrees: (what: string, planned: string, by: string) =>
    `${what} moved as the plan says (${planned}), within the ± ${by} that a kit can tell.`,
  would: {
    kit: 'the same water with another kit, or a sample of known content with this one',
    kitHigh: (by: string) =>
      `a kit that reads ${by} too high throughout: try the same water with another, or a sample of known content with this one`,
    kitLow: (by: string) =>
      `a kit that reads ${by} too low throughout: try the same water with another, or a sample of known content with this one`,
    withSalinity: (moved: string) =>
      `salinity, which strayed too and takes ${moved} of it along: look at that first`,
    bag: (holds: string, typed: string) =>
      `a test of newly mixed water: ${holds} instead of ${typed} would make it up`,
    unlogged: (grams: string, additive: string) =>
      `what went in and was not written down: ${grams} g of ${additive} a week would make it up`,
    creep: (grams: string) =>
      `salt that leaves as creep, spray or skimmate: ${grams} g of dry salt a week would make it up`,
    skeleton: (mgPerCa: string, typed: string) =>
      `coralline algae: ${mgPerCa} instead of ${typed} mmol of magnesium for each mol of calcium laid down would make it up`,
  },

  // Beside it.
  endsAt: (calcium: string, magnesium: string, salinity: string) =>
    `That leads to ${calcium} mg/L calcium, ${magnesium} mg/L magnesium and ${salinity} ppt, replayed from the newest readings with the plan in force.`,
  takenBack: (what: string, by: string) =>
    `After that a change of your water moves ${what} by ${by} in one day, since what you mix holds another level of it. Smaller changes, more often, move it less at once.`,
  kitDoubt: (calcium: string, magnesium: string) =>
    `A kit may be off by ${calcium} mg/L calcium and ${magnesium} mg/L magnesium (two standard errors, common practice): test again half-way.`,
  refused: (what: string) =>
    `What would get there is not offered: it would lead to ${what}. Choose a target nearer to what was read, or turn that first.`,
  fast: (what: string, by: string) => `${what} moving by ${by} in a day`,
  alkalinityFirst: (harm: string, day: string) =>
    `Nothing of it is poured or changed yet: as the tank runs, alkalinity falls below ${harm} dKH on day ${day}, and with more calcium it falls faster. Hold alkalinity first (“What to turn”, “Plans”), then look again.`,
  outOfReach:
    'Salinity is too far off for water changes of a few weeks: test it with another instrument first.',
  high: (what: string, value: string, limit: string) =>
    `${what} stands at ${value}, above your ${limit}; nothing takes it out but corals and water changes.`,
  ways: {
    wait: (count: number) => `As it runs it is back inside after ${days(count)}.`,
    leaveOut: (count: number) =>
      `With that salt left out of the bottles it is back inside after ${days(count)}.`,
    change: (litres: string, percent: string, count: number) =>
      `With ${litres} L (${percent} %) changed each week it is back inside after ${days(count)}.`,
  },
  noWay: (holds: string) =>
    `None of these gets it inside within half a year: your new water itself holds ${holds} mg/L. Another mix, or a test of this one, comes first.`,
  leftIn: (what: string, percent: string) =>
    `Your bottles bring more ${what} than corals and changes take: fill them with ${percent} % of its salt.`,
  weekly: (grams: string, additive: string, parts: string) =>
    `Water changes alone do not hold it: each week add ${grams} g ${additive}, ${parts}.`,
  parts: {
    once: 'at once',
    in: (count: string) => `in ${count} parts`,
    daily: 'a seventh each day',
  },
  plainOf: (plain: string, of: string, salinity: string) =>
    `Of these ${of} L a week ${plain} L are plain fresh water where the rest is mixed to ${salinity} ppt as now: that much salt comes in with what is dosed.`,
  strongerBy: (salinity: string, now: string) =>
    `New water of ${salinity} instead of ${now} ppt makes up for the salt that leaves.`,
  alkalinityLower: (by: string) =>
    `After half a year alkalinity then stands ${by} dKH lower than as it runs: turn it as your tests show.`,
  alkalinityHigher: (by: string) =>
    `After half a year alkalinity then stands ${by} dKH higher than as it runs: turn it as your tests show.`,
  promised: (count: number, what: string) =>
    `At every use that is thought possible ${what} then stay inside your limits for ${days(count)}.`,
  promisedBut: (what: string, day: string) =>
    `Before long ${what}, from day ${day} at the use thought possible that is worst for it: test by then.`,
  notHeldAbove: (what: string, day: string) =>
    `${what} is not held by this: above your limit from day ${day}.`,
  notHeldBelow: (what: string, day: string) =>
    `${what} is not held by this: below your limit from day ${day}.`,
  drift: (what: string, now: string, half: string, whole: string, by: string) =>
    `If nothing is turned, ${what} goes from ${now} to ${half} in 90 days and ${whole} in 180 (± ${by} if the pumps give a tenth more or less)`,
  driftLeaves: (drift: string, day: string) => `${drift}, outside your limits on day ${day}`,
  driftShares: (drift: string, shares: string) => `${drift}: ${shares}.`,
  alkalinityLeaves: (day: string) =>
    `Alkalinity itself leaves your limits on day ${day} as it runs: turn that first, then ask again.`,
  instead: (what: string, mornings: number) =>
    `Instead: ${what} each morning for ${days(mornings)}. Sulfate shifts the share of sulfate to chloride, chloride the other way.`,
  changesPlanned:
    'No water change stands in the log: those of the plan were taken to have been done.',
  useAssumed: (use: string) =>
    `Too little alkalinity was read in this time: ${use} dKH a day is what is known of the use today.`,
  useRead: (use: string) =>
    `The alkalinity of the log says that corals took ${use} dKH a day at first.`,
  notRead: (what: string) =>
    `Nobody has read ${what}: the plan’s numbers stand for it. Test it before you add anything.`,
  pouredSince: (what: string, by: string, day: string) =>
    `${what} is counted ${by} higher than it was read on ${day}: that much came in since, by the log (poured in, or with new water), and is still there. The next test tells.`,
  changedSince: (what: string, by: string, day: string) =>
    `${what} is counted ${by} lower than it was read on ${day}: water was changed since, by the log, and the new holds less. The next test tells.`,
  oldReading: (what: string, count: number) =>
    `${what} was last read ${count} days ago: test it before you add anything.`,
  notInIt:
    'Not in it: salt creep and spray, wet filter socks, other ions than these, food and frozen blocks of it. Goggles for calcium chloride: it gets hot in water and irritates eyes; dissolve each salt by itself.',
};
