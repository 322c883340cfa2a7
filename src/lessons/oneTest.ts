import { say } from '../../shared/words/lessonOneTest';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const oneTest: Lesson = {
  id: 'one-test',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 3,
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 0.1 },
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'well', text: say.predict.choices.well },
      { id: 'roughly', text: say.predict.choices.roughly },
      { id: 'not', text: say.predict.choices.not },
    ],
    right: 'not',
    changes: [],
    judge: ({ begin }) => {
      const share = measures.testedDoubt.of(begin) / measures.alkalinityFallPerDay.of(begin);
      return share < 0.25 ? 'well' : share < 1 ? 'roughly' : 'not';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['days'],
    range: [2, 30],
    title: say.control.title,
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [[['days'], 14]],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['alkalinity_dkh'],
  pictures: ['tests'],
  assumes: say.assumes,
};
