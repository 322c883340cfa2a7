export const en = {
  alkalinity: {
    term: 'Alkalinity',
    sentence:
      'What the water can still take up of acid; growing corals use it up, and it is the number to watch.',
  },
  omega: {
    term: 'Ω (saturation)',
    sentence:
      'How far above its solubility aragonite stands: corals build above 1, and chalk may fall out by itself from about 10 on.',
  },
  brucite: {
    term: 'Brucite',
    sentence:
      'Magnesium hydroxide, which may fall out of very alkaline water; it is left out here.',
  },
  carbonates: {
    term: 'Carbonate and bicarbonate',
    sentence: 'The two forms in which the water holds most of its carbon and its alkalinity.',
  },
  commonPractice: {
    term: 'Common practice',
    sentence:
      'What many keepers do, without a source that was measured; every such number can be changed.',
  },
  deadBand: {
    term: 'Dead band',
    sentence: 'How far the level falls before the top-off pump starts.',
  },
  dic: {
    term: 'DIC',
    sentence: 'Dissolved inorganic carbon: carbon dioxide, bicarbonate and carbonate together.',
  },
  dkh: {
    term: 'dKH',
    sentence:
      'German degrees of carbonate hardness: a unit of alkalinity, of which one is 0.357 milliequivalents a litre.',
  },
  doseCard: {
    term: 'Dose card',
    sentence: 'One printed page for the tank: what to mix, dose and test, and when to stop.',
  },
  drill: {
    term: 'Drill',
    sentence:
      'A failure rehearsed on paper: what breaks, when it becomes dangerous, what keeps it from getting there.',
  },
  dump: { term: 'Dump', sentence: 'The whole reservoir going into the tank at once.' },
  fit: { term: 'Fit', sentence: 'The simulated tank matched to the test log.' },
  forecast: {
    term: 'Forecast',
    sentence: 'What the fitted tank does next, with how far it may be off.',
  },
  kLa: {
    term: 'kLa',
    sentence:
      'How fast water and air exchange gas, in parts an hour: about 0.15 for a still surface, 0.5 for a rippled one, 1.5 and more with overflow and skimmer (common practice).',
  },
  ledger: {
    term: 'Ledger',
    sentence: 'Where alkalinity came from and where it went, booked by the engine as it goes.',
  },
  lesson: {
    term: 'Lesson',
    sentence: 'A guided experiment with a prediction, one thing to move, a question and a why.',
  },
  limewater: {
    term: 'Limewater',
    sentence:
      'Calcium hydroxide dissolved in fresh water: calcium and alkalinity at once, very alkaline.',
  },
  calciumReactor: {
    term: 'Calcium reactor',
    sentence: 'A column of coral gravel that dissolves in water made acid with carbon dioxide.',
  },
  ph: {
    term: 'pH (NBS)',
    sentence:
      'How acid or alkaline the water is, on the scale that hobby probes are set to; a real probe is within about 0.1.',
  },
  photosynthesis: {
    term: 'Photosynthesis',
    sentence:
      'Light takes carbon dioxide out of the water by day, so pH rises; by night it comes back.',
  },
  practicalSalinity: {
    term: 'Practical salinity',
    sentence: 'The salt in the water, close to grams in a kilogram.',
  },
  rankCorrelation: {
    term: 'Rank correlation',
    sentence: 'Between −1 and 1: how far the order of one thing follows the order of another.',
  },
  reservoir: { term: 'Reservoir', sentence: 'The vessel that the top-off pump draws from.' },
  residual: {
    term: 'Residual',
    sentence: 'How far a reading lies from what the fitted tank says, in standard deviations.',
  },
  saltMix: {
    term: 'Salt mix',
    sentence:
      'The dry salt for new water; here it is the dKH, calcium and magnesium at a stated salinity.',
  },
  scenario: {
    term: 'Scenario',
    sentence: 'A plan as a file, with a title, a question and the answer it should give.',
  },
  settledCycle: {
    term: 'Settled daily cycle',
    sentence:
      'A trial begins on a day that ends as it began, so that the first days show no start-up drift.',
  },
  standardError: {
    term: 'Standard error',
    sentence: 'How far an estimate may well be off; twice of it holds nineteen times in twenty.',
  },
  sump: {
    term: 'Sump',
    sentence: 'The vessel below the tank; when it is full, water runs onto the floor.',
  },
  tank: {
    term: 'Tank',
    sentence: 'Your real one: its plans are on the bench, its readings in the log.',
  },
  todaysPlan: {
    term: 'Today’s plan',
    sentence: 'The trial that stands for the real tank as it runs now; the log is read against it.',
  },
  topOff: {
    term: 'Top-off',
    sentence: 'Puts back as fresh water what evaporates, by level sensor and pump.',
  },
  trial: { term: 'Trial', sentence: 'One simulated run of a plan.' },
  twoPart: {
    term: 'Two-part',
    sentence: 'A carbonate and a calcium solution, dosed side by side in equal parts.',
  },
  ammonia: {
    term: 'Un-ionised ammonia',
    sentence: 'The part of ammonia that harms fish; it grows with pH.',
  },
  verdict: { term: 'Verdict', sentence: 'What a trial says against your limits, in a sentence.' },
  wash: {
    term: 'Wash',
    sentence: 'The pale band in a chart: your limits, or where most of the possible tanks lie.',
  },
  consumption: {
    term: 'Consumption',
    sentence: 'How much alkalinity the corals take in a day, as though nothing were added.',
  },
  slope: {
    term: 'Slope',
    sentence: 'How fast readings rise or fall, by the straight line through them, doses and all.',
  },
  giveOrTake: {
    term: '± (give or take)',
    sentence: 'Two standard errors either way: the truth lies within in nineteen of twenty cases.',
  },
  limitLine: {
    term: 'Limit',
    sentence:
      'A value of yours that a quantity should not pass; every limit can be changed in the plan.',
  },
  ensemble: {
    term: 'Ensemble',
    sentence:
      'Many tanks that might be yours, each a little different in what nobody knows exactly.',
  },
  quantile: {
    term: 'Quantile',
    sentence: 'The value that so many of the tanks stay below: 5 %, half, or 95 % of them.',
  },
};
