export const en = {
  scenario: {
    title: 'Title',
    place: 'Place',
    question: 'Question',
    answer: 'Answer it should give',
    days: { title: 'Length of the trial' },
    dosers: 'Dosing pumps',
    additions: 'Additions',
    faults: 'Faults',
    responses: 'Responses',
  },
  measured: {
    salinity:
      'Conductivity meter or refractometer, checked with a 35 ppt standard. Specific gravity here is 25/25: 35 ppt is 1.0264. A hydrometer made for 60 °F reads 1.0244 in that water at 25 °C, one for 20/20 °C 1.0266.',
    alkalinity: 'Alkalinity test, at the same hour each time.',
    readsLikeGravity: (typed: string, salinity: string) =>
      `${typed} reads like a specific gravity (25/25); as salinity that is ${salinity}`,
  },
  tank: {
    title: 'Tank',
    help: 'The water as it is at the first hour.',
    volumeL: {
      title: 'Net water volume',
      help: 'Tank, sump and pipes, less rock and sand.',
      measure:
        'Not the rated volume: add a weighed amount of salt and read the rise in salinity, or tape measure less rock.',
    },
    alkalinityDkh: 'Alkalinity',
    calciumMgPerL: 'Calcium',
    magnesiumMgPerL: 'Magnesium',
    salinityPractical: 'Salinity',
    tempC: { title: 'Temperature' },
    nitrateMgPerL: { title: 'Nitrate' },
    phosphateMgPerL: { title: 'Phosphate' },
    ammoniaMgPerL: {
      title: 'Total ammonia',
      help: 'As NH₃ and NH₄⁺ together, counted as ammonia (NH₃).',
    },
  },
  start: {
    title: 'How the trial starts',
    help: 'What sets pH at the first hour.',
    carbon: {
      title: 'Starting pH',
      help: 'The settled daily cycle of this plan, balance with the room air, or a pH you measured.',
    },
    phNbs: {
      title: 'Measured pH at the start',
      help: 'As a hobby probe reads (NBS scale). Used only when the trial starts from a measured pH.',
    },
    omegaReference: {
      title: 'Saturation that the typed use belongs to',
      help: '0 means the mean of this trial’s own first day. A trial that starts from another plan’s water takes that plan’s.',
    },
    clockHour: {
      title: 'Clock time at the start',
      help: 'Hour of the day at which the trial begins.',
    },
  },
};
