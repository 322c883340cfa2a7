import { say } from '../../shared/words/lessonDripAndStuckPump';
import { newFault } from '../../shared/scenario/newFault';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const dripAndStuckPump: Lesson = {
  id: 'drip-and-stuck-pump',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 4,
    tank: { volumeL: 300, alkalinityDkh: 8.5, calciumMgPerL: 425 },
    corals: { useDkhPerDay: 0.6 },
    evaporation: { litresPerDay: 2 },
    room: { co2Ppm: 600 },
    gas: { kLaPerH: 1.5 },
    dosers: [
      {
        name: say.names.doser,
        recipe: [{ additive: 'calciumHydroxide', gramsPerL: 1.4 }],
        mlPerDay: 2000,
        schedule: { fromHour: 17, pumpMlPerMin: 140 },
        stockL: 10,
      },
    ],
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'nothing', text: say.predict.choices.nothing },
      { id: 'ph', text: say.predict.choices.ph },
      { id: 'both', text: say.predict.choices.both },
    ],
    right: 'ph',
    changes: [[['dosers', 0, 'schedule', 'hours'], 0.5]],
    judge: ({ begin, predicted }) => {
      const ph = measures.phHighest.of(predicted) - measures.phHighest.of(begin) > 0.08;
      const more = measures.alkalinityEnd.of(predicted) - measures.alkalinityEnd.of(begin) > 0.3;
      return ph && more ? 'both' : ph ? 'ph' : 'nothing';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['dosers', 0, 'schedule', 'hours'],
    range: [0.25, 24],
    title: say.control.title,
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [
      [['dosers', 0, 'schedule', 'pumpMlPerMin'], 80],
      [['faults'], [newFault('doserOn', { day: 1, hour: 9, endsAfterH: 96 })]],
    ],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['ph_nbs', 'alkalinity_dkh'],
  pictures: ['species', 'day'],
  assumes: say.assumes,
};
