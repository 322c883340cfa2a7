import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const calciumHardlyMoves: Lesson = {
  id: 'calcium-hardly-moves',
  title: 'Why calcium hardly moves',
  about: 'Growth takes both, mole for mole; the water holds far more of one.',
  scenario: lessonScenario({
    title: 'Ten days without a dose',
    question:
      'Corals take calcium with every piece they build. Why does the calcium test not show it?',
    days: 10,
    tank: { volumeL: 300, alkalinityDkh: 9, calciumMgPerL: 430 },
    corals: { useDkhPerDay: 0.4 },
  }),
  setting:
    'A tank of {begin.tank.volumeL} is left undosed for {begin.days}. It starts at {begin.alkalinityStart} and {begin.calciumStart} of calcium, and its corals use {begin.useFirstDay}.',
  predict: {
    question: 'Alkalinity falls by {begin.alkalinityFallPercent}. By how much does calcium fall?',
    choices: [
      { id: 'same', text: 'By about the same share: corals take one with the other.' },
      { id: 'tenth', text: 'By a small fraction of that share.' },
      { id: 'none', text: 'Not at all.' },
    ],
    right: 'tenth',
    changes: [],
    judge: ({ begin }) => {
      const share =
        measures.calciumFallPercent.of(begin) / measures.alkalinityFallPercent.of(begin);
      return share > 0.5 ? 'same' : share > 0.02 ? 'tenth' : 'none';
    },
  },
  reveal:
    'Alkalinity went from {begin.alkalinityStart} to {begin.alkalinityEnd}. Calcium went from {begin.calciumStart} to {begin.calciumEnd}, by {begin.calciumFallPercent}: less than most calcium tests can tell.',
  control: {
    path: ['corals', 'useDkhPerDay'],
    range: [0.1, 0.7],
    invite: 'Move what the corals use, and compare the two charts.',
    now: 'Alkalinity falls by {now.alkalinityFall}, calcium ends at {now.calciumEnd}. That is {now.calciumForEachDkh} of calcium for each dKH.',
  },
  ask: {
    question:
      'Elsewhere a tank is low in calcium, with alkalinity held by soda ash alone. How did that happen?',
    changes: [
      [['days'], 60],
      [['corals', 'useDkhPerDay'], 0.1],
    ],
    answer:
      'Slowly. Each dKH that corals use costs {asked.calciumForEachDkh} of calcium, whether or not something brings the alkalinity back. Soda ash brings none. Even a quiet tank, with {asked.corals.useDkhPerDay} and nothing dosed, goes from {asked.calciumStart} to {asked.calciumEnd} in {asked.days}.',
  },
  why: [
    'Each piece of skeleton takes one calcium and two equivalents of alkalinity. Counted in those terms the water holds several times more calcium than alkalinity, so the same bite is a large share of one and a small share of the other.',
    'That is why alkalinity is the number to test every week, and calcium the number to test now and then. It also means a slow loss of calcium goes unseen for months if only alkalinity is dosed.',
  ],
  equation: {
    text: 'Δ[Ca²⁺] = ½ · Δ(alkalinity)',
    inWords:
      'Counted in moles of calcium and equivalents of alkalinity, calcium changes by half of what alkalinity changes.',
  },
  charts: ['alkalinity_dkh', 'calcium_mg_l'],
  pictures: ['flow'],
  assumes:
    'A little magnesium and strontium goes into the skeleton in place of calcium (from memory), so that the figure is slightly under the pure one.',
};
