import { say } from '../../shared/words/lessonLimewaterAir';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const limewaterAir: Lesson = {
  id: 'limewater-air',
  title: say.title,
  about: say.about,
  scenario: lessonScenario({
    title: say.plan.title,
    question: say.plan.question,
    days: 14,
    tank: { volumeL: 300, alkalinityDkh: 8.5, calciumMgPerL: 425 },
    corals: { useDkhPerDay: 1.1 },
    evaporation: { litresPerDay: 4 },
    topOff: {
      reservoirL: 30,
      refillEveryDays: 3,
      deadBandL: 0.1,
      additive: 'calciumHydroxide',
      gramsPerL: 1.1,
    },
    room: { co2Ppm: 450 },
    gas: { kLaPerH: 1 },
    photosynthesis: { grossMmolPerLPerDay: 0.2 },
  }),
  setting: say.setting,
  predict: {
    question: say.predict.question,
    choices: [
      { id: 'phUp', text: say.predict.choices.phUp },
      { id: 'phDown', text: say.predict.choices.phDown },
      { id: 'alkalinity', text: say.predict.choices.alkalinity },
    ],
    right: 'phDown',
    changes: [[['gas', 'kLaPerH'], 3]],
    judge: ({ begin, predicted }) => {
      const rise = measures.phHighest.of(predicted) - measures.phHighest.of(begin);
      return Math.abs(rise) < 0.03 ? 'alkalinity' : rise > 0 ? 'phUp' : 'phDown';
    },
  },
  reveal: say.reveal,
  control: {
    path: ['topOff', 'gramsPerL'],
    range: [0, 1.5],
    invite: say.control.invite,
    now: say.control.now,
  },
  ask: {
    question: say.ask.question,
    changes: [[['room', 'co2Ppm'], 1200]],
    answer: say.ask.answer,
  },
  why: Object.values(say.why),
  equation: say.equation,
  charts: ['ph_nbs', 'alkalinity_dkh', 'pco2_uatm'],
  pictures: ['species', 'day'],
  assumes: say.assumes,
};
