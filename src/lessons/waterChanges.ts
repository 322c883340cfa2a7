import { say } from '../../shared/words/lessonWaterChanges';
import { lastOf } from '../../shared/verdict/measures';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';

export const waterChanges: Lesson = {
  id: 'water-changes',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 60,
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 0.06 },
    waterChanges: {
      percent: 15,
      everyDays: 7,
      salt: {
        name: say.names.salt,
        alkalinityDkh: 10.5,
        calciumMgPerL: 450,
        magnesiumMgPerL: 1380,
        atSalinityPractical: 35,
      },
    },
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'holds', text: say.predict.choices.holds },
      { id: 'below', text: say.predict.choices.below },
      { id: 'climbs', text: say.predict.choices.climbs },
    ],
    right: 'below',
    changes: [[['corals', 'useDkhPerDay'], 0.3]],
    judge: ({ predicted: { scenario, outcome } }) => {
      const end = lastOf(outcome.trace, 'alkalinity_dkh');
      if (end < scenario.limits.alkalinityLowDkh) return 'below';
      return end > scenario.tank.alkalinityDkh + 0.3 ? 'climbs' : 'holds';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['waterChanges', 'percent'],
    range: [0, 50],
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [
      [['corals', 'useDkhPerDay'], 0.3],
      [['waterChanges', 'percent'], 50],
    ],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['alkalinity_dkh', 'calcium_mg_l'],
  pictures: ['flow'],
  assumes: say.assumes,
};
