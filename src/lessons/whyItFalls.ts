import { say } from '../../shared/words/lessonWhyItFalls';
import { lastOf } from '../../shared/verdict/measures';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';

const pump = (
  name: string,
  additive: 'sodiumCarbonate' | 'calciumChlorideDihydrate',
  gramsPerL: number,
) => ({
  name,
  recipe: [{ additive, gramsPerL }],
  mlPerDay: 68,
  stockL: 10,
});

export const whyItFalls: Lesson = {
  id: 'why-it-falls',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 60,
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 0.6, growthPercentPerDay: 0.6 },
    dosers: [
      pump(say.names.soda, 'sodiumCarbonate', 50),
      pump(say.names.calcium, 'calciumChlorideDihydrate', 69.5),
    ],
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'same', text: say.predict.choices.same },
      { id: 'lower', text: say.predict.choices.lower },
      { id: 'higher', text: say.predict.choices.higher },
    ],
    right: 'lower',
    changes: [],
    judge: ({ begin: { outcome, scenario } }) => {
      const change = lastOf(outcome.trace, 'alkalinity_dkh') - scenario.tank.alkalinityDkh;
      return Math.abs(change) < 0.3 ? 'same' : change < 0 ? 'lower' : 'higher';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['corals', 'growthPercentPerDay'],
    range: [0, 1],
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [[['corals', 'growthPercentPerDay'], 0]],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['alkalinity_dkh', 'skeleton_g'],
  pictures: ['flow'],
  assumes: say.assumes,
};
