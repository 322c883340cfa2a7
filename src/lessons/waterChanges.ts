import { lastOf } from '../../shared/verdict/measures';
import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';

export const waterChanges: Lesson = {
  id: 'water-changes',
  title: 'When water changes stop being enough',
  about: 'The same bucket every week, against corals that want more.',
  scenario: lessonScenario({
    title: 'A bucket a week',
    question: 'How much use can a weekly water change carry?',
    days: 60,
    tank: { volumeL: 300, alkalinityDkh: 8.5 },
    corals: { useDkhPerDay: 0.06 },
    waterChanges: {
      percent: 15,
      everyDays: 7,
      salt: {
        name: 'high-alkalinity mix',
        alkalinityDkh: 11.5,
        calciumMgPerL: 450,
        magnesiumMgPerL: 1380,
        atSalinityPractical: 35,
      },
    },
  }),
  setting:
    'A tank of {begin.tank.volumeL} gets {begin.waterChanges.percent} new water every {begin.waterChanges.everyDays}, mixed to {begin.waterChanges.salt.alkalinityDkh}. Its young corals use {begin.corals.useDkhPerDay}, and after {begin.days} it stands at {begin.alkalinityEnd}. The corals thrive; a year later they use {predicted.corals.useDkhPerDay}.',
  predict: {
    question: 'With the same bucket every week, what happens now?',
    choices: [
      { id: 'holds', text: 'It holds: new water brings more than the tank has lost.' },
      { id: 'below', text: 'It sinks below the limit of the keeper’s band.' },
      { id: 'climbs', text: 'It climbs: the salt mix is richer than the tank.' },
    ],
    right: 'below',
    changes: [[['corals', 'useDkhPerDay'], 0.3]],
    judge: ({ predicted: { scenario, outcome } }) => {
      const end = lastOf(outcome.trace, 'alkalinity_dkh');
      if (end < scenario.limits.alkalinityLowDkh) return 'below';
      return end > scenario.tank.alkalinityDkh + 0.3 ? 'climbs' : 'holds';
    },
  },
  reveal:
    'It sinks to {predicted.alkalinityEnd}, below the keeper’s limit of {predicted.limits.alkalinityLowDkh}. The new water lifts it a little each week; the corals take more than that before the next bucket.',
  control: {
    path: ['waterChanges', 'percent'],
    range: [0, 50],
    invite: 'Back to the young corals: move the size of the bucket.',
    now: '{now.waterChanges.percent} every {now.waterChanges.everyDays} ends at {now.alkalinityEnd}. The largest move within a day is {now.largestDailyChange}.',
  },
  ask: {
    question:
      'Grown corals, and a bucket of {asked.waterChanges.percent} a week: does that hold the band, and what does it cost?',
    changes: [
      [['corals', 'useDkhPerDay'], 0.3],
      [['waterChanges', 'percent'], 50],
    ],
    answer:
      'It ends at {asked.alkalinityEnd}, and every change moves the tank by up to {asked.largestDailyChange} within a day. Beyond a certain use the answer is not a larger bucket but a dose that goes in as slowly as the corals take it.',
  },
  why: [
    'A water change moves the tank a part of the way towards the new water. The nearer the tank already is, the less it brings. So there is a level at which a week’s gain equals a week’s use, and that level sinks as use climbs.',
    'For small use the level lies inside the band and the bucket is enough. For large use it lies below, however good the salt.',
  ],
  equation: {
    text: 'use · days between changes = share changed · (new water − tank)',
    inWords:
      'At the level where it settles, what the corals use between two changes equals the share changed times the difference between the new water and the tank.',
  },
  charts: ['alkalinity_dkh', 'calcium_mg_l'],
  pictures: ['flow'],
  assumes:
    'The salt mix is an invented one of the high family, and the limits are common practice. Corals slow down gently as saturation falls.',
};
