export const en = {
  title: 'The slow drip and the stuck pump',
  about: 'The same bottle of limewater, over days or at once.',
  plan: {
    title: 'A bottle of limewater',
    question: 'Does it matter how fast the same limewater goes in?',
  },
  names: {
    doser: 'limewater',
  },
  setting:
    'A bottle of {begin.dosers.0.stockL} of limewater drips into {begin.tank.volumeL}: {begin.dosers.0.mlPerDay}, spread over {begin.dosers.0.schedule.hours}. pH peaks at {begin.phHighest}. Then someone sets the pump so that the day’s dose is in after {predicted.dosers.0.schedule.hours}.',
  predict: {
    question: 'The same limewater goes in each day, only faster. What changes?',
    choices: {
      nothing: 'Nothing much: a day’s dose is a day’s dose.',
      ph: 'pH peaks higher; alkalinity ends where it did.',
      both: 'Both end up much higher.',
    },
  },
  reveal:
    'pH now peaks at {predicted.phHighest} instead of {begin.phHighest}. Alkalinity ends at {predicted.alkalinityEnd}, against {begin.alkalinityEnd} before.',
  control: {
    title: 'The day’s dose goes in over',
    invite: 'Move the hours over which the day’s dose goes in.',
    now: 'Over {now.dosers.0.schedule.hours} pH peaks at {now.phHighest}.',
  },
  ask: {
    question:
      'The pump sticks on at {asked.dosers.0.schedule.pumpMlPerMin}, until the whole bottle of {asked.dosers.0.stockL} is in the tank. How high does pH go?',
    answer:
      'To {asked.phHighest}, and alkalinity moves by {asked.largestDailyChange} within a day. What stops this is not the pump but the size of the bottle: a reservoir that cannot harm the tank even when all of it goes in. First unplug the pump with dry hands, then measure; for sick animals ask a qualified aquatic vet.',
  },
  why: {
    first:
      'Hydroxide goes in at once; carbon dioxide from the air takes hours to follow. Dripped slowly, the air keeps up and pH hardly moves. Poured, the water has to give up its own carbon dioxide, and pH jumps until the air has caught up.',
    second:
      'Alkalinity counts only what went in, not how fast. So a test of alkalinity will not warn you of a pump that doses in gulps; a pH probe will.',
  },
  equation: {
    text: 'Ca(OH)₂ + 2 CO₂ → Ca²⁺ + 2 HCO₃⁻',
    inWords:
      'One calcium hydroxide needs two carbon dioxides to become one calcium and two bicarbonates.',
  },
  assumes:
    'Chalk falls out by itself only at very high saturation, and how fast is an illustration, not a prediction. Above the range of the constants pH is shown only as beyond it. Calcium hydroxide: gloves and goggles.',
};
