export const en = {
  title: 'Why calcium hardly moves',
  about: 'Growth takes both, mole for mole; the water holds far more of one.',
  plan: {
    title: 'Ten days without a dose',
    question:
      'Corals take calcium with every piece they build. Why does the calcium test not show it?',
  },
  setting:
    'A tank of {begin.tank.volumeL} is left undosed for {begin.days}. It starts at {begin.alkalinityStart} and {begin.calciumStart} of calcium, and its corals use {begin.useFirstDay}.',
  predict: {
    question: 'Alkalinity falls by {begin.alkalinityFallPercent}. By how much does calcium fall?',
    choices: {
      same: 'By about the same share: corals take one with the other.',
      tenth: 'By a small fraction of that share.',
      none: 'Not at all.',
    },
  },
  reveal:
    'Alkalinity went from {begin.alkalinityStart} to {begin.alkalinityEnd}. Calcium went from {begin.calciumStart} to {begin.calciumEnd}, by {begin.calciumFallPercent}: less than most calcium tests can tell.',
  control: {
    invite: 'Move what the corals use, and compare the two charts.',
    now: 'Alkalinity falls by {now.alkalinityFall}, calcium ends at {now.calciumEnd}. That is {now.calciumForEachDkh} of calcium for each dKH.',
  },
  ask: {
    question:
      'Elsewhere a tank is low in calcium, with alkalinity held by soda ash alone. How did that happen?',
    answer:
      'Slowly. Each dKH that corals use costs {asked.calciumForEachDkh} of calcium, whether or not something brings the alkalinity back. Soda ash brings none. Even a quiet tank, with {asked.corals.useDkhPerDay} and nothing dosed, goes from {asked.calciumStart} to {asked.calciumEnd} in {asked.days}.',
  },
  why: {
    first:
      'Each piece of skeleton takes one calcium and two equivalents of alkalinity. Counted in those terms the water holds several times more calcium than alkalinity, so the same bite is a large share of one and a small share of the other.',
    second:
      'That is why alkalinity is the number to test every week, and calcium the number to test now and then. It also means a slow loss of calcium goes unseen for months if only alkalinity is dosed.',
  },
  equation: {
    text: 'Δ[Ca²⁺] = ½ · Δ(alkalinity)',
    inWords:
      'Counted in moles of calcium and equivalents of alkalinity, calcium changes by half of what alkalinity changes.',
  },
  assumes:
    'A little magnesium and strontium goes into the skeleton in place of calcium (from memory), so that the figure is slightly under the pure one.',
};
