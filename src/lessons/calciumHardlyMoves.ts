import { say } from '../../shared/words/lessonCalciumHardlyMoves';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const calciumHardlyMoves: Lesson = {
  id: 'calcium-hardly-moves',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 10,
    tank: { volumeL: 300, alkalinityDkh: 9, calciumMgPerL: 430 },
    corals: { useDkhPerDay: 0.4 },
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'same', text: say.predict.choices.same },
      { id: 'tenth', text: say.predict.choices.tenth },
      { id: 'none', text: say.predict.choices.none },
    ],
    right: 'tenth',
    changes: [],
    judge: ({ begin }) => {
      const share =
        measures.calciumFallPercent.of(begin) / measures.alkalinityFallPercent.of(begin);
      return share > 0.5 ? 'same' : share > 0.02 ? 'tenth' : 'none';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['corals', 'useDkhPerDay'],
    range: [0.1, 0.7],
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [
      [['days'], 60],
      [['corals', 'useDkhPerDay'], 0.1],
    ],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['alkalinity_dkh', 'calcium_mg_l'],
  pictures: ['flow'],
  assumes: say.assumes,
};
