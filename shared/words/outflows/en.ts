export const en = {
  outflows: {
    title: 'Losses',
    help: 'Water that leaves with its salt.',
    skimmingLPerDay: { title: 'Wet skimming' },
    leakLPerDay: { title: 'Leak' },
    spareL: {
      title: 'Room in the sump before it overflows',
      help: 'Above the normal level. What is more runs onto the floor.',
    },
  },
  calciumReactor: {
    title: 'Calcium reactor',
    help: 'Carbon dioxide dissolves coral gravel; its effluent drips into the tank.',
    dripLPerH: {
      title: 'Drip of effluent',
      help: '0 means there is none.',
      measure: 'Millilitres in a minute, times 0.06.',
    },
    effluentDkh: { title: 'Effluent alkalinity' },
    effluentPhNbs: { title: 'Effluent pH' },
  },
};
