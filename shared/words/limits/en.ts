export const en = {
  limits: {
    title: 'Your limits',
    help: 'The band you want to stay inside (common practice).',
    alkalinityLowDkh: { title: 'Alkalinity, low' },
    alkalinityHighDkh: { title: 'Alkalinity, high' },
    alkalinityHarmDkh: {
      title: 'Alkalinity where harm is expected',
      help: 'Stony corals suffer well before 5 dKH (common practice).',
    },
    alkalinityChangeDkhPerDay: { title: 'Alkalinity change in a day' },
    phLowNbs: { title: 'pH, low' },
    phHighNbs: { title: 'pH, high' },
    phHarmNbs: {
      title: 'pH where harm is expected',
      help: 'Drills say when it is passed.',
    },
    phChangePerH: { title: 'pH change in an hour' },
    oxygenLowMgPerL: {
      title: 'Oxygen, low: time to act',
      help: 'Below 4 mg/L act (common practice).',
    },
    oxygenHarmMgPerL: {
      title: 'Oxygen where harm is expected',
      help: 'Too little for fish and corals is usually taken at 2.0–2.8 mg/L (Frontiers in Marine Science 2022, 945293, abstract).',
    },
    unionisedAmmoniaMgPerL: {
      title: 'Un-ionised ammonia, high',
      help: '0.035 mg/L NH₃ is the chronic line for salt water of EPA 1989 (from memory). The toxic share of total ammonia grows with pH: enter the tank’s ammonia reading.',
    },
    omegaHigh: {
      title: 'Saturation (Ω), high',
      help: 'From about 10 on chalk may fall out on surfaces (illustration, not prediction).',
    },
    calciumLowMgPerL: { title: 'Calcium, low' },
    calciumHighMgPerL: { title: 'Calcium, high' },
    magnesiumLowMgPerL: { title: 'Magnesium, low' },
    magnesiumHighMgPerL: { title: 'Magnesium, high' },
    salinityLowPractical: { title: 'Salinity, low' },
    salinityHighPractical: { title: 'Salinity, high' },
    tempLowC: { title: 'Temperature, low' },
    tempHighC: { title: 'Temperature, high' },
    tempHarmC: {
      title: 'Temperature where harm is expected',
      help: 'Warm water holds less oxygen, and corals lose their algae (common practice).',
    },
  },
};
