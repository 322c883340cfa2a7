export const en = {
  title: 'Why alkalinity falls as corals grow',
  about: 'The ledger of a growing tank: what is enough today is too little next month.',
  plan: {
    title: 'A dose that once was enough',
    question: 'The pumps give what the corals took on the first day. Does alkalinity hold?',
  },
  names: {
    soda: 'soda ash',
    calcium: 'calcium',
  },
  setting:
    'A tank of {begin.tank.volumeL} starts at {begin.alkalinityStart}. On the first day its corals take {begin.useFirstDay}, and two pumps bring that much back, day after day. The corals grow by {begin.corals.growthPercentPerDay}.',
  predict: {
    question: 'After {begin.days}, where is alkalinity?',
    choices: {
      same: 'Where it was: what is taken is brought back.',
      lower: 'Lower: the corals take more than they did.',
      higher: 'Higher: growing corals give alkalinity back.',
    },
  },
  reveal:
    'Alkalinity ends at {begin.alkalinityEnd}, which is {begin.alkalinityFall} lower. The corals took {begin.takenByCorals} in all and laid down {begin.skeletonG} of skeleton. The corals grew by {begin.grownPercent}; use went only from {begin.useFirstDay} to {begin.useLastDay}, since they build more slowly as saturation falls, while the pumps stayed as they were.',
  control: {
    invite: 'Move the growth of the corals, and watch the end of the line.',
    now: 'Growing by {now.corals.growthPercentPerDay}, they use {now.useLastDay} at the end, and alkalinity ends at {now.alkalinityEnd}.',
  },
  ask: {
    question: 'What if the corals did not grow at all: would the same pumps hold the tank?',
    answer:
      'Yes. Without growth of the colony use stays at {asked.useLastDay} and alkalinity ends at {asked.alkalinityEnd}. Skeleton is still laid down, {asked.skeletonG} of it: what changes the dose is not that corals build, but that there is more coral to build.',
  },
  why: {
    first:
      'A coral builds its skeleton of calcium carbonate. For each piece it takes one calcium and one carbonate from the water. Carbonate carries two charges, so every piece costs two equivalents of alkalinity.',
    second:
      'As the colony grows, more surface builds. Use climbs in step with it, and a dose that never changes falls behind. As alkalinity sinks, saturation sinks too and growth slows a little: that hides part of the gap.',
  },
  equation: {
    text: 'Ca²⁺ + 2 HCO₃⁻ → CaCO₃ + CO₂ + H₂O',
    inWords:
      'One calcium and two bicarbonates make one calcium carbonate, one carbon dioxide and one water. The two bicarbonates are the two equivalents.',
  },
  assumes:
    'Growth of the use is even and branching, and answers gently to saturation (common practice). The tank is not fed.',
};
