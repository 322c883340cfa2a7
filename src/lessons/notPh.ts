import { say } from '../../shared/words/lessonNotPh';
import { highest, lastOf } from '../../shared/verdict/measures';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';

export const notPh: Lesson = {
  id: 'not-ph',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 3,
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 0 },
    room: { co2Ppm: 450 },
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'both', text: say.predict.choices.both },
      { id: 'alkalinity', text: say.predict.choices.alkalinity },
      { id: 'ph', text: say.predict.choices.ph },
    ],
    right: 'ph',
    changes: [[['room', 'co2Ppm'], 1500]],
    judge: ({ begin, predicted }) => {
      const end = (run: typeof begin) => lastOf(run.outcome.trace, 'alkalinity_dkh');
      const top = (run: typeof begin) => highest(run.outcome.trace, 'ph_nbs').value;
      const alkalinity = end(begin) - end(predicted) > 0.05;
      const ph = top(begin) - top(predicted) > 0.05;
      return alkalinity && ph ? 'both' : alkalinity ? 'alkalinity' : ph ? 'ph' : 'none';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['room', 'co2Ppm'],
    range: [400, 2500],
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [[['room', 'co2Ppm'], 420]],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['ph_nbs', 'alkalinity_dkh'],
  pictures: ['species', 'day'],
  assumes: say.assumes,
};
