import { say } from '../../shared/words/lessonSmallTank';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const smallTank: Lesson = {
  id: 'small-tank',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 2,
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { measuredAs: 'area', rateMmolPerM2PerDay: 100, areaM2: 0.06 },
    evaporation: { litresPerDay: 1 },
    topOff: { reservoirL: 0 },
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'same', text: say.predict.choices.same },
      { id: 'faster', text: say.predict.choices.faster },
      { id: 'slower', text: say.predict.choices.slower },
    ],
    right: 'faster',
    changes: [[['tank', 'volumeL'], 30]],
    judge: ({ begin, predicted }) => {
      const ratio = measures.takenByCorals.of(predicted) / measures.takenByCorals.of(begin);
      const less = begin.scenario.tank.volumeL / predicted.scenario.tank.volumeL;
      return ratio < 0.9 ? 'slower' : ratio > 0.6 * less ? 'faster' : 'same';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['tank', 'volumeL'],
    range: [15, 600],
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [[['tank', 'volumeL'], 15]],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['alkalinity_dkh', 'salinity_ppt'],
  pictures: ['flow'],
  assumes: say.assumes,
};
