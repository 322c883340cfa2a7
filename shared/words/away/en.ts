const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

export const en = {
  panel: {
    title: 'Away',
    why: 'Nobody doses, tests, mixes or changes water by hand; pumps, top-off and lights go on as the tank runs today. Reservoir and bottles are filled on the day you leave.',
    days: 'Away for, days',
    visits: 'Somebody comes every, days',
    nobody: '0: nobody comes',
    ask: 'Leave it alone on the simulated tank',
    trying: 'Leaving the simulated tank alone …',
    failing: 'Breaking, one after the other, what can break …',
    trouble: (why: string) => `It could not be worked out: ${why}`,
    tryIt: 'Try it on the bench',
    full: 'The bench is full: remove a trial there first.',
    sheet: 'The sitter’s sheet, to print',
    outside: (typed: string, min: string, max: string) =>
      `Got ${typed}; expected whole days from ${min} to ${max}.`,
    caption: 'What has to stand in it when you leave',
    vessel: 'Vessel',
    has: 'Holds, L',
    leave: 'Leave with, L',
    used: 'Used as set, L',
    fill: 'For all days, L',
    lasts: 'What it holds now lasts',
    reservoir: 'top-off reservoir',
    throughout: 'throughout',
    lastsDays: (asSet: string, surely: string) => `${asSet} days, ${surely} at worst`,
    lastsBut: (surely: string) => `throughout as set, ${surely} days at worst`,
    tooMuch: 'more than can be set',
    failuresTitle: 'What may go wrong while nobody looks',
    failuresWhy:
      'Each begins at the worst hour of the first night and goes on until somebody comes. Ranges are those of the tanks that yours may be.',
    kinderTitle: 'What would make the worst of them kinder',
    more: 'Litres, limits and what else may go wrong',
  },
  name: (count: number) => `Away for ${days(count)}`,
  provision: {
    asIs: 'leave reservoir and bottles as they are, full',
    fills: (litres: string) => `fill ${litres}`,
    reservoirSame: (litres: string, gramsPerL: string) =>
      `${litres} L of today’s mix (${gramsPerL} g/L) in the reservoir`,
    reservoirThinner: (litres: string, gramsPerL: string, now: string) =>
      `${litres} L in the reservoir, mixed with ${gramsPerL} g/L instead of ${now}, since so much of today’s mix at once would do harm`,
    reservoirPlain: (litres: string) => `${litres} L of plain fresh water in the reservoir`,
    reservoirNew: (litres: string) =>
      `set up a top-off with ${litres} L of plain fresh water in its reservoir`,
    bottle: (litres: string, name: string) => `${litres} L in the bottle of “${name}”`,
    toppedUp: (every: number) =>
      `every ${days(every)} whoever comes fills the reservoir up with plain fresh water`,
    mixed: (every: number) =>
      `every ${days(every)} whoever comes fills the reservoir up with today’s mix, which you leave ready in canisters with a label (goggles and gloves: it burns eyes)`,
  },
  kept: (count: number, what: string, from: string, to: string, low: string, high: string) =>
    `It can be left alone for ${days(count)}: ${what}. Alkalinity goes from ${from} to ${to} dKH (${low}–${high} at every use that is thought possible).`,
  keptBut: (leave: number, of: number) =>
    ` In ${leave} of ${of} tanks that yours may be, something leaves your limits all the same.`,
  noTopOff: (litres: string) =>
    `There is no top-off: what evaporates, up to ${litres} L a day, has to be filled in by hand every day, or by a top-off that you set up and watch before you leave.`,
  inside: (watched: string) =>
    `At no use that is thought possible does anything watched leave your limits: ${watched}.`,
  insideBut: (lines: string) =>
    `Nothing goes farther outside than it is as the tank runs now; outside either way: ${lines}.`,
  leaves: (count: number, what: string, day: string, way: string) =>
    `Not for ${days(count)}: ${what}, first on day ${day}. ${way}`,
  onlyVisited: (count: number, what: string, day: string, every: number) =>
    `Not for ${days(count)} as asked: ${what}, first on day ${day}. It can with somebody coming every ${days(every)}.`,
  passes: (what: string, value: string) => `${what} (to ${value})`,
  leavesRange: 'the simulated tank leaves the range of its chemistry',
  wayOut: {
    fewerDays: (count: number) => `It can for ${days(count)}, or with somebody who tests by then.`,
    withVisits: (count: number, every: number) =>
      `It can for ${days(count)} with somebody coming every ${days(every)}.`,
    firstOfAll: 'Put that right before you leave.',
    best: (what: string) => `Best for as long as it goes: ${what}.`,
  },
  handDoses:
    'What you pour in by hand now is missing while you are away: a pump would have to bring it (the plans below).',
  rim: (litres: string) =>
    `No more than ${litres} L may stand in the reservoir: if all of it ran in at once, more would run over the sump’s rim onto the floor.`,
  tooFull: (litres: string) =>
    `No more than ${litres} L of today’s mix may stand in the reservoir: if all of it ran in at once, more would pass the pH that harms or your highest alkalinity.`,
  named: (pump: string) => `“${pump}”`,
  lasts: (vessel: string, how: string) => `What it holds now lasts: ${vessel} ${how}.`,
  margin: (evaporation: string, pumps: string) =>
    `Litres are for ${evaporation} % more evaporation and ${pumps} % more from each pump than is set: two standard errors of what is commonly off.`,
  assumedUse: (use: string, by: string) =>
    `Nobody has measured the use: ${use} ± ${by} dKH a day is the plan’s own. Two tests a few days apart would tell.`,
  assumedLevel: (level: string) =>
    `No alkalinity has been read: it is taken to begin at the plan’s ${level} dKH. Test before you leave.`,
  odds: (leave: number, of: number) =>
    leave === 0
      ? `In none of ${of} tanks that yours may be does anything leave your limits that is inside now.`
      : `In ${leave} of ${of} tanks that yours may be, something leaves your limits that is inside now`,
  oddsOf: (what: string, leave: number) => `${what} in ${leave}`,
  oddsFrom:
    'The tanks that yours may be differ as such tanks commonly do: in use, evaporation, pumps, strength of the mix, volume, level, gas exchange and the room’s air.',
  notInIt:
    'Not in any of it: illness, algae or snails on a sensor, a filter that clogs, and feeding that differs from what the plan feeds.',
  worst: (what: string, hour: string, told: string) =>
    `Worst while nobody looks: ${what} at ${hour} in the first night. ${told}`,
  harm: (line: string, after: string) => `Harm: ${line} after ${after}.`,
  comesAfter: (span: string) => `Somebody comes ${span} after it began.`,
  comesBefore: (span: string) => `Somebody comes ${span} after it began, before that.`,
  harmless: (what: string) => `By itself none of these passes a limit in that time: ${what}.`,
  failure: (what: string, hour: string) => `${what}, ${hour}`,
  sheet: {
    title: 'The sitter’s sheet',
    of: (tank: string) => `Looking after ${tank}`,
    dates: (from: string, to: string) => `The keeper is away from ${from} and back on ${to}.`,
    visits: (count: number) => `You come every ${days(count)}.`,
    print: 'Print the sheet',
    back: 'Back to the log',
    working: 'Leaving the simulated tank alone, and breaking what can break …',
    people:
      'People first. Wet floor: breaker, from a dry place, before anything else. Dry hands at every plug. Nothing here is worth getting hurt for.',
    look: 'Look, each time you come',
    looks: {
      fish: 'Do the fish breathe calmly, and are the corals open as in the picture that the keeper left? What you see of the animals comes before everything else on this sheet.',
      flow: 'Does water move at the surface, and do return pump and skimmer run?',
      temperature: (low: string, high: string) =>
        `Does the thermometer show ${low} to ${high} °C? If not, see “heater” below.`,
      level: 'Is the water in the sump at its mark, and the floor dry?',
      reservoir: 'Is there water in the top-off reservoir?',
      bottles: 'Is something left in each bottle? Look only.',
      feed: 'Feed only the portions that lie ready, one a day; if in doubt, none.',
    },
    topUp: 'Top up',
    topUps: {
      nothing: 'Nothing: what stands there lasts until the keeper is back.',
      lasts: (count: string) =>
        `What stands there may be used up after ${count} days. Call the keeper before that.`,
      byHand: (litres: string) =>
        `If the reservoir is empty: fill the sump up to its mark with plain fresh water (from the canister marked “fresh”), slowly, no more than ${litres} L in a day, and call.`,
      plain: (litres: string) =>
        `Fill the top-off reservoir up to its mark with plain fresh water (from the canister marked “fresh”), nothing in it, no more than ${litres} L at a visit. If it takes more, call: something is leaking or stuck.`,
      mix: (litres: string) =>
        `Fill the top-off reservoir up to its mark from the canister marked “mix”, slowly and without stirring, no more than ${litres} L at a visit. Goggles and gloves: it burns eyes and skin. In an eye: rinse 15–20 minutes with running water, lids open, then a doctor. If it takes more, call.`,
    },
    never: 'Never',
    nevers:
      'Never mix or pour in powders. Never pour salt water or tap water in. Never stir the reservoir. Never make up in one go for what was missed. Never turn a pump up or down. Never reach into the water with a lamp or cable over it. No acid.',
    failures: 'If something has failed: the first act, then call',
    keeper: 'Call the keeper:',
    others: 'Vet · poison centre · electrician:',
    places: 'Breaker, battery pump and fresh water are at:',
    note: 'Times are from a simulated tank, run as it was left, each failure at the worst hour of the first night with nobody doing anything, from the worst to the best that this tank may be; an estimate. Common practice: check it against the safety data sheets and your local rules.',
    unkept:
      'Keeper: the simulated tank does not keep its limits for so long; see the log page before you leave.',
  },
};
