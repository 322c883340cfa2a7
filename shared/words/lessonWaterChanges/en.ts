export const en = {
  title: 'When water changes stop being enough',
  about: 'The same bucket every week, against corals that want more.',
  plan: {
    title: 'A bucket a week',
    question: 'How much use can a weekly water change carry?',
  },
  names: {
    salt: 'high-alkalinity mix',
  },
  setting:
    'A tank of {begin.tank.volumeL} gets {begin.waterChanges.percent} new water every {begin.waterChanges.everyDays}, mixed to {begin.waterChanges.salt.alkalinityDkh}. Its young corals use {begin.corals.useDkhPerDay}, and after {begin.days} it stands at {begin.alkalinityEnd}. The corals thrive; a year later they use {predicted.corals.useDkhPerDay}.',
  predict: {
    question: 'With the same bucket every week, what happens now?',
    choices: {
      holds: 'It holds: new water brings more than the tank has lost.',
      below: 'It sinks below the limit of the keeper’s band.',
      climbs: 'It climbs: the salt mix is richer than the tank.',
    },
  },
  reveal:
    'It sinks to {predicted.alkalinityEnd}, below the keeper’s limit of {predicted.limits.alkalinityLowDkh}. The new water lifts it a little each week; the corals take more than that before the next bucket.',
  control: {
    invite: 'Back to the young corals: move the size of the bucket.',
    now: '{now.waterChanges.percent} every {now.waterChanges.everyDays} ends at {now.alkalinityEnd}. The largest move within a day is {now.largestDailyChange}.',
  },
  ask: {
    question:
      'Grown corals, and a bucket of {asked.waterChanges.percent} a week: does that hold the band, and what does it cost?',
    answer:
      'It ends at {asked.alkalinityEnd}, and every change moves the tank by up to {asked.largestDailyChange} within a day. Beyond a certain use the answer is not a larger bucket but a dose that goes in as slowly as the corals take it.',
  },
  why: {
    first:
      'A water change moves the tank a part of the way towards the new water. The nearer the tank already is, the less it brings. So there is a level at which a week’s gain equals a week’s use, and that level sinks as use climbs.',
    second:
      'For small use the level lies inside the band and the bucket is enough. For large use it lies below, however good the salt.',
  },
  equation: {
    text: 'use · days between changes = share changed · (new water − tank)',
    inWords:
      'At the level where it settles, what the corals use between two changes equals the share changed times the difference between the new water and the tank.',
  },
  assumes:
    'The salt mix is an invented one of the high family, and the limits are common practice. Corals slow down gently as saturation falls.',
};
