export const en = {
  topOff: {
    title: 'Top-off',
    help: 'Replaces what evaporates, and may carry an additive.',
    reservoirL: {
      title: 'Reservoir',
      help: '0 means no top-off at all.',
    },
    additive: { title: 'Dissolved in it' },
    gramsPerL: {
      title: 'Strength of the mix',
      help: 'Weighed in at each refill. Calcium hydroxide beyond saturation stays on the bottom and serves the next refill.',
      measure: 'Kitchen scale; a level teaspoon is a guess.',
    },
    settledG: {
      title: 'Undissolved powder at the start',
      help: 'Calcium hydroxide on the bottom of the reservoir, which keeps refills saturated while it lasts.',
    },
    saturationPercent: {
      title: 'Limewater strength at saturation',
      help: '100 % is 1.50 g/L at 25 °C; handbooks differ by 10 %.',
    },
    pumpLPerH: {
      title: 'Top-off pump',
      measure: 'Seconds to fill a one-litre jug: 3600 divided by them.',
    },
    deadBandL: {
      title: 'Drop that starts the pump',
      help: 'Dead band of the level sensor, as volume.',
    },
    refillEveryDays: {
      title: 'Refilled every',
      help: '0 means never: see how long it lasts.',
    },
    refillHour: { title: 'Refilled at' },
    lossPercentPerDay: {
      title: 'Limewater lost to the air',
      help: 'CO₂ turns limewater to chalk: about 0.5 under a lid (0–2), 5 in an open reservoir (2–13).',
    },
    secondSwitchL: {
      title: 'Second switch, above normal level',
      help: 'Cuts the pump at this much too much water; 0 means there is none.',
    },
    runLimitMinPerH: {
      title: 'Run-time limit, in an hour',
      help: '0 means none.',
    },
    runLimitMinPerDay: {
      title: 'Run-time limit, in a day',
      help: '0 means none.',
    },
    siphonLPerH: {
      title: 'Siphon after the pump stops',
      help: 'An outlet below the reservoir’s water goes on running; an anti-siphon break makes it 0.',
    },
  },
  ingredient: {
    title: 'Ingredient',
    additive: { title: 'Substance' },
    gramsPerL: { title: 'Strength' },
  },
  schedule: {
    title: 'Schedule',
    help: 'When in the day the dose goes in.',
    way: {
      title: 'Dosed',
      help: 'spread: a steady drip; doses: so many a day; everyMinutes: one dose every so many minutes.',
    },
    fromHour: { title: 'from' },
    hours: { title: 'for' },
    doses: { title: 'Doses in that time' },
    everyMinutes: { title: 'Every' },
    pumpMlPerMin: { title: 'Pump' },
    weekdays: {
      title: 'Only on',
      help: 'Empty means every day. The trial starts on a Monday.',
    },
  },
  doser: {
    title: 'Dosing pump',
    help: 'One bottle, one pump.',
    name: 'Name',
    recipe: { title: 'Recipe of the stock' },
    mlPerDay: {
      title: 'Dose',
      measure: 'Run the pump into a measuring cylinder for a day’s setting.',
    },
    stockL: { title: 'Bottle' },
  },
  saltMix: {
    title: 'Salt mix',
    help: 'What the new water holds when mixed to a stated salinity.',
    name: 'Name',
    alkalinityDkh: 'Alkalinity',
    calciumMgPerL: 'Calcium',
    magnesiumMgPerL: 'Magnesium',
    atSalinityPractical: 'Stated at salinity',
  },
  waterChanges: {
    title: 'Water changes',
    help: 'A batch out, the same volume of new water in.',
    percent: { title: 'Each change' },
    everyDays: { title: 'Every' },
    hour: { title: 'At' },
    continuousLPerDay: {
      title: 'Continuous change',
      help: 'As much new water in as old water out, all day.',
    },
    newWater: {
      title: 'New water is',
      help: 'aerated: in balance with the room air; fresh: at the pH set below.',
    },
    freshPhNbs: { title: 'pH of fresh mix' },
    newWaterTempC: { title: 'Temperature of new water' },
    salinityPractical: 'Mixed to salinity',
  },
  addition: {
    title: 'One-off addition',
    help: 'Dissolved and poured in at once.',
    day: { title: 'On day' },
    hour: { title: 'At' },
    additive: { title: 'Substance' },
    grams: { title: 'Amount' },
  },
};
