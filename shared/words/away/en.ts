const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);
const every = (count: number) => (count === 1 ? 'every day' : `every ${days(count)}`);

export const en = {
  panel: {
    title: 'Away',
    why: 'Nobody doses, tests, mixes or changes water by hand; pumps, top-off and lights go on as the tank runs today. On the day you leave, reservoir and bottles are left as full as may be needed, and never fuller than does no harm if all of it goes in at once.',
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
    has: 'Holds now, L',
    used: 'Used as set, L',
    needed: 'Needed at most, L',
    leave: 'Leave with, L',
    most: 'No more than, L, and why',
    anyOfIt: 'what it holds or may need does no harm at once',
    mostHarm: (litres: string, ph: string, dkh: string) =>
      `${litres}: more at once would pass pH ${ph} or ${dkh} dKH`,
    mostRim: (litres: string) => `${litres}: more at once would run over the sump’s rim`,
    mostOther: (litres: string, today: string) =>
      `${litres} of this; of today’s mix ${today}, since more at once would do harm`,
    doesHarm: (most: string) => `this does harm all at once; ${most}`,
    reservoir: 'top-off reservoir',
    reservoirIs: 'the reservoir',
    bottleIs: (name: string) => `the bottle of “${name}”`,
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
    leave: (litres: string) => `leave ${litres}`,
    reservoirSame: (litres: string, gramsPerL: string) =>
      `${litres} of today’s mix (${gramsPerL} g/L) in the reservoir`,
    reservoirThinner: (litres: string, gramsPerL: string, now: string) =>
      `${litres} in the reservoir, mixed with ${gramsPerL} g/L instead of ${now}, since so much of today’s mix at once would do harm`,
    reservoirPlain: (litres: string) => `${litres} of plain fresh water in the reservoir`,
    reservoirNew: (litres: string) =>
      `a new top-off with ${litres} of plain fresh water in its reservoir`,
    noReservoir: 'no top-off, as now',
    empty: 'the reservoir empty',
    bottle: (litres: string, name: string) => `${litres} in the bottle of “${name}”`,
    visits: (count: number, what: string) =>
      `${every(count)} whoever comes fills up to that again: ${what}`,
    withPlain: 'the reservoir with plain fresh water',
    withMix:
      'the reservoir with today’s mix, which you leave ready in canisters with a label (goggles and gloves: it burns eyes)',
    withStock: (name: string) =>
      `the bottle of “${name}”, from a canister with its name on it (goggles and gloves)`,
  },
  harms: (vessels: string) =>
    `Nothing that lasts is harmless: ${vessels} does harm if all of it goes in at once. Have somebody look every day, or stay away for less.`,
  harmsReservoir: (litres: string, most: string) =>
    `${litres} in the reservoir (up to ${most} does none)`,
  harmsBottle: (litres: string, name: string, most: string) =>
    `${litres} in the bottle of “${name}” (up to ${most} does none)`,
  kept: (count: number, what: string, from: string, to: string, low: string, high: string) =>
    `It can be left alone for ${days(count)}: ${what}. Alkalinity goes from ${from} to ${to} dKH (${low}–${high} at every use that is thought possible).`,
  keptBut: (leave: number, of: number) =>
    ` In ${leave} of ${of} tanks that yours may be, something leaves your limits all the same.`,
  noTopOff: (litres: string) =>
    `There is no top-off: what evaporates, up to ${litres} a day, has to be filled in by hand every day, or by a top-off that you set up and watch before you leave.`,
  inside: (watched: string) =>
    `At no use that is thought possible does anything watched leave your limits: ${watched}.`,
  insideBut: (lines: string) =>
    `Nothing goes farther outside than it is as the tank runs now; outside either way: ${lines}.`,
  leaves: (count: number, what: string, day: string, way: string) =>
    `Not for ${days(count)}: ${what}, first on day ${day}. ${way}`,
  onlyVisited: (count: number, what: string, day: string, often: number) =>
    `Not for ${days(count)} as asked: ${what}, first on day ${day}. It can with somebody coming ${every(often)}.`,
  passes: (what: string, value: string) => `${what} (to ${value})`,
  empties: (vessel: string) => `${vessel} may stand empty`,
  leavesRange: 'the simulated tank leaves the range of its chemistry',
  wayOut: {
    fewerDays: (count: number) =>
      `It can for ${days(count)}, or with somebody who tests and fills up by then.`,
    withVisits: (count: number, often: number, why: string, day: string) =>
      `It can for ${days(count)} with somebody coming ${every(often)}; then ${why}, first on day ${day}.`,
    moreOften:
      'Somebody who tests, and can fill up or dose, would have to come more than once a day.',
    firstOfAll: 'Put that right before you leave.',
    best: (what: string) => `Best for as long as it goes: ${what}.`,
  },
  handDoses:
    'What you pour in by hand now is missing while you are away: a pump would have to bring it (the plans below).',
  rim: (litres: string, lasts: string) =>
    `No more than ${litres} may stand in the reservoir, which lasts ${lasts} days at worst: if all of it ran in at once, more would run over the sump’s rim onto the floor.`,
  tooFull: (litres: string, lasts: string, ph: string, dkh: string) =>
    `No more than ${litres} of today’s mix may stand in the reservoir, which lasts ${lasts} days at worst: if all of it ran in at once, more would pass pH ${ph} or ${dkh} dKH.`,
  bottleTooFull: (name: string, litres: string, lasts: string, ph: string, dkh: string) =>
    `No more than ${litres} may stand in the bottle of “${name}”, which lasts ${lasts} days at worst: if its pump sticks, more at once would pass pH ${ph}, ${dkh} dKH or the sump’s rim.`,
  fromNow: (level: string) =>
    `Reckoned from the ${level} dKH of now, at the worst hour of the day.`,
  named: (pump: string) => `“${pump}”`,
  lasts: (vessel: string, how: string) => `What it holds now lasts: ${vessel} ${how}.`,
  margin: (evaporation: string, pumps: string) =>
    `Litres are for ${evaporation} % more evaporation and ${pumps} % more from each pump than is set: two standard errors of what is commonly off.`,
  assumedUse: (use: string, by: string) =>
    `Nobody has measured the use: ${use} ± ${by} dKH a day is the plan’s own. Two tests a few days apart would tell.`,
  assumedLevel: (level: string) =>
    `No alkalinity has been read: it is taken to begin at the plan’s ${level} dKH. Test before you leave.`,
  leapt:
    'Between two readings the water was moved at once by something that is not in the log and may do so again: find it before you leave.',
  untold:
    'The readings rise by more than is dosed, so that nobody knows what the tank uses: find out why before you leave.',
  oldLevel: (day: string, level: string) =>
    `The newest reading is of ${day}, and the next test is overdue: it is taken to begin at the ${level} dKH that follow from it. Test before you leave.`,
  odds: (count: number, leave: number, of: number) =>
    leave === 0
      ? `In none of ${of} tanks that yours may be does anything leave your limits within ${days(count)} that is inside now.`
      : `In ${leave} of ${of} tanks that yours may be, something leaves your limits within ${days(count)} that is inside now`,
  oddsOf: (what: string, leave: number) => `${what} in ${leave}`,
  oddsFrom:
    'The tanks that yours may be differ as such tanks commonly do: in use, evaporation, pumps, strength of the mix, volume, level, gas exchange and the room’s air.',
  notInIt:
    'Not in any of it: illness, algae or snails on a sensor, a filter that clogs, and feeding that differs from what the plan feeds.',
  worst: (what: string, hour: string, told: string) =>
    `Worst while nobody looks: ${what} at ${hour} in the first night. ${told}`,
  harm: (line: string, after: string) => `Harm: ${line} ${after}.`,
  comesAfter: (span: string) => `Somebody comes ${span} after it began.`,
  comesBefore: (span: string) => `Somebody comes ${span} after it began, before that.`,
  harmless: (what: string) => `By itself none of these passes a limit in that time: ${what}.`,
  failure: (what: string, hour: string) => `${what}, ${hour}`,
  sheet: {
    title: 'The sitter’s sheet',
    noDays: (typed: string, max: string) =>
      `This sheet is for days away, and the address has to say how many: got ${typed === '' ? 'nothing' : `“${typed}”`}; expected whole days from 1 to ${max}, as in #sitter/9, or #sitter/9/3 where somebody comes every 3 days. “Away” in the log writes it for you.`,
    of: (tank: string) => `Looking after ${tank}`,
    dates: (from: string, to: string) => `The keeper is away from ${from} and back on ${to}.`,
    visits: (count: number) => `You come ${every(count)}.`,
    nobody: 'Nobody comes unless they are called: this sheet is for whoever is called then.',
    print: 'Print the sheet',
    back: 'Back to the log',
    working: 'Leaving the simulated tank alone, and breaking what can break …',
    people:
      'People first. Wet floor: breaker, from a dry place, before anything else. Dry hands at every plug. Nothing here is worth getting hurt for.',
    look: 'Look, each time you come',
    lookCalled: 'Look, when you are called',
    looks: {
      fish: 'Do the fish breathe calmly, and are the corals open as in the picture that the keeper left? What you see of the animals comes before everything else on this sheet.',
      flow: 'Does water move at the surface, and do the pumps run?',
      temperature: (low: string, high: string) => `Does the thermometer show ${low} to ${high} °C?`,
      level: 'Is the water in the sump (the basin under the tank) at its mark, and the floor dry?',
      reservoir: (litres: string) =>
        `Has the top-off reservoir (the canister that fills up what evaporates) fallen, but by no more than ${litres} a day?`,
      bottles: 'Has each bottle on a pump fallen a little, and is something left in it?',
      feed: 'Feed only the portions that lie ready, one a day; if in doubt, none.',
    },
    topUp: 'Top up',
    stands: 'What stands there',
    topUps: {
      nothing: 'Nothing to do: what stands there lasts until the keeper is back.',
      lasts: (count: string) =>
        `The reservoir may be used up after ${count} days. Call the keeper before that.`,
      bottleLasts: (name: string, count: string) =>
        `The bottle of “${name}” may be empty after ${count} days. Call the keeper before that.`,
      bottle: (name: string, mark: string, litres: string) =>
        `Fill the bottle of “${name}” up to its mark (${mark}) from the canister with the same name, slowly, no more than ${litres} at a visit. Goggles and gloves: it irritates eyes and skin. If it takes more, call.`,
      byHand: (litres: string) =>
        `If the reservoir is empty: fill the sump up to its mark with plain fresh water (from the canister marked “fresh”), slowly, no more than ${litres} in a day, and call the keeper.`,
      plain: (mark: string, litres: string) =>
        `Fill the top-off reservoir up to its mark (${mark}) with plain fresh water (from the canister marked “fresh”), nothing in it, no more than ${litres} at a visit. If it takes more, call: something is leaking or stuck.`,
      mix: (mark: string, litres: string) =>
        `Fill the top-off reservoir up to its mark (${mark}) from the canister marked “mix”, slowly and without stirring, no more than ${litres} at a visit. Goggles and gloves: it burns eyes and skin. In an eye: rinse 15–20 minutes with running water, lids open, then a doctor. If it takes more, call.`,
    },
    never: 'Never',
    nevers:
      'Never mix or pour in powders. Never pour salt water or tap water in. Never stir the reservoir. Never make up in one go for what was missed. Never turn a pump up or down. Never reach into the water with a lamp or cable over it. No acid.',
    failures: 'What you see, and the one thing to do',
    pace: (name: string, ml: string) => `“${name}”: ${ml} mL`,
    sights: {
      floor: {
        sees: () => 'Water on the floor, or near a socket',
        act: () => 'Touch nothing wet. Breaker off, from a dry place.',
      },
      gas: {
        sees: () => 'A hiss from the gas cylinder, or you feel dizzy or short of breath',
        act: () => 'Leave the room, open its door wide, and do not go back in to look.',
      },
      dark: {
        sees: () => 'Lamps and pumps are dead: the power is out',
        act: () =>
          'Air into the water: the battery pump, or scoop water up and pour it back. With dry hands unplug every pump that brings something in from a canister or a bottle. Do not feed.',
      },
      still: {
        sees: () => 'The surface is still though the lamps burn, or fish gasp at the surface',
        act: () => 'Battery pump into the water. With dry hands see whether a plug has come out.',
      },
      hot: {
        sees: (high: string) => `The thermometer is above ${high} °C`,
        act: () => 'Unplug the heater with dry hands. Lid off. No ice, no cold water.',
      },
      cold: {
        sees: (low: string) => `The thermometer is below ${low} °C`,
        act: () =>
          'With dry hands see whether the heater’s plug has come out. Blanket around the tank. No hot water.',
      },
      fallsFast: {
        sees: (litres: string) =>
          `The reservoir fell by more than ${litres} in a day, or the sump stands above its mark`,
        act: () =>
          'Unplug its pump with dry hands, and lift the end of its hose out of the water. Fill nothing in.',
      },
      standsStill: {
        sees: () =>
          'The reservoir has not fallen since yesterday, and the sump stands below its mark',
        act: (litres: string) =>
          `Fresh water from the canister marked “fresh” into the sump up to its mark, slowly, no more than ${litres} a day.`,
      },
      bottleEmpty: {
        sees: (paces: string) => `A bottle fell by more than it should in a day (at most ${paces})`,
        act: () => 'Unplug the pump on it with dry hands. Fill nothing in.',
      },
      bottleFull: {
        sees: () => 'A bottle has not fallen for two days',
        act: () => 'Touch nothing. Never pour in what was missed.',
      },
      cloudy: {
        sees: () => 'The water is white or cloudy',
        act: () =>
          'With dry hands unplug every pump that brings something in from a canister or a bottle. Stir nothing.',
      },
    },
    calls: {
      nowHarm: (span: string) =>
        `Then call the keeper at once: harm may come as soon as ${span} after it began.`,
      todayHarm: (span: string) =>
        `Then call the keeper the same day: harm may come as soon as ${span} after it began.`,
      now: 'Then call the keeper at once.',
      today: 'Then call the keeper the same day.',
      tell: 'Then tell the keeper; it can wait until evening.',
    },
    unseen:
      'Much that may go wrong cannot be seen and needs a test kit. So if open corals look shut or slimy for a day, or a fish lies or gasps, touch nothing else and call.',
    keeper: 'Call the keeper:',
    others: 'Vet · poison centre · electrician:',
    places: 'Breaker, battery pump and fresh water are at:',
    note: 'Times are from a simulated tank, run as it was left, each failure at the worst hour of the first night with nobody doing anything; an estimate. Common practice: check it against the safety data sheets and your local rules.',
    unkept: (day: string, why: string) =>
      `Keeper: not kept from ${day} on: ${why}. See the log page before you leave.`,
    unkeptThen: (day: string, why: string) => `Then, from ${day} on: ${why}.`,
    unkeptCall: (day: string) => `From ${day} on, call the keeper every day, whatever you see.`,
  },
};
