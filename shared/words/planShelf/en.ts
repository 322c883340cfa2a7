export const en = {
  'beyond-limewater': {
    title: 'More than limewater can carry',
    question:
      'Limewater at saturation is not enough for 1.8 dKH a day. What does a two-part pump have to add?',
  },
  'do-nothing': {
    title: 'Lagoon left alone',
    question: 'What happens in the next 60 days if nothing is dosed and nothing is changed?',
  },
  'grow-out-near-ten': {
    title: 'Grow-out kept near 10',
    question:
      'Can a grow-out tank be held near 10 dKH with limewater and bicarbonate, and what does pH do?',
  },
  'limewater-holds': {
    title: 'Limewater holds a mixed tank',
    question: 'Can limewater in the top-off hold 0.7 dKH a day on its own?',
  },
  'calcium-reactor-raceway': {
    title: 'A raceway on a calcium reactor',
    question: 'Can a calcium reactor carry 1.8 dKH a day, and what does its CO₂ do to pH?',
  },
  'over-fed': {
    title: 'An over-fed tank',
    question: 'Soft corals use next to nothing: why does alkalinity fall all the same?',
  },
  'pico-tank': {
    title: 'A pico tank on a desk',
    question: 'How fast does everything move in 12 L, and can one refill a week do?',
  },
  'recovery-from-six': {
    title: 'Back from 6.2',
    question:
      'At 6.2 dKH: how do I get to 8.5 with bicarbonate without moving more than 0.5 dKH a day?',
  },
  'water-changes-high-salt': {
    title: 'Water changes with a high-alkalinity salt',
    question: 'Is 15 % a week with a high salt mix enough on its own?',
  },
  'water-changes-low-salt': {
    title: 'Water changes with a low-alkalinity salt',
    question: 'Is 15 % a week with a low salt mix enough on its own?',
  },
  'winter-room': {
    title: 'Winter, windows shut',
    question:
      'What does a winter of shut windows and dry heating air do to pH and to what limewater brings?',
  },
};
