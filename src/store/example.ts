import { say } from '../../shared/words/bench';
import { scenarioOf } from '../../shared/scenario/write';

/** The living example of a first visit: one thing to drag, the strength of the limewater. */
export const example = scenarioOf({
  type: 'paper-reef/scenario',
  version: 5,
  title: say.example.title,
  place: 'The field school at Quillon Bay',
  question: say.example.question,
  answer: '',
  days: 60,
  tank: { volumeL: 300, alkalinityDkh: 8.5, calciumMgPerL: 425, magnesiumMgPerL: 1310 },
  corals: { useDkhPerDay: 1.1, growthPercentPerDay: 0 },
  evaporation: { litresPerDay: 4 },
  topOff: { reservoirL: 20, additive: 'calciumHydroxide', gramsPerL: 0.9, refillEveryDays: 4 },
  gas: { kLaPerH: 2 },
  food: { gramsPerDay: 3 },
});
