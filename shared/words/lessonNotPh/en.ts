export const en = {
  title: 'Alkalinity is not pH',
  about: 'The air of the room moves pH; alkalinity does not notice.',
  plan: {
    title: 'Windows open, windows shut',
    question: 'Which reading does the air of the room move?',
  },
  setting:
    'A tank of {begin.tank.volumeL} without stony corals, at {begin.alkalinityStart}. The windows are open and the room has {begin.room.co2Ppm} of carbon dioxide. Then winter comes, the windows stay shut, and the room has {predicted.room.co2Ppm}.',
  predict: {
    question: 'What do the two tests say once the water has settled in the stale air?',
    choices: {
      both: 'Both alkalinity and pH are lower.',
      alkalinity: 'Alkalinity is lower, pH is the same.',
      ph: 'pH is lower, alkalinity is the same.',
    },
  },
  reveal:
    'pH peaked at {begin.phHighest} with open windows and peaks at {predicted.phHighest} in the stale room. Alkalinity ends at {begin.alkalinityEnd} in the one and at {predicted.alkalinityEnd} in the other.',
  control: {
    invite: 'Move the carbon dioxide of the room.',
    now: 'At {now.room.co2Ppm} pH swings between {now.phLowest} and {now.phHighest}; alkalinity ends at {now.alkalinityEnd}.',
  },
  ask: {
    question:
      'Someone reads a low pH in this room and wants to dose alkalinity to mend it. Which window would mend it instead?',
    answer:
      'An open one. In outdoor air, {asked.room.co2Ppm}, the same water peaks at {asked.phHighest} with alkalinity still at {asked.alkalinityEnd}. A dose would raise a number that was never low.',
  },
  why: {
    first:
      'Alkalinity counts charges: how much more positive salt than negative salt the water holds. Carbon dioxide has no charge. When it enters, it turns carbonate into bicarbonate, two charges in one piece becoming one charge in each of two pieces. The sum of charges stays.',
    second:
      'pH answers to how the carbon is shared out. More carbon dioxide makes more acid, and pH falls. So a pH reading says nothing about alkalinity unless the air is known.',
  },
  equation: {
    text: 'CO₂ + CO₃²⁻ + H₂O ⇌ 2 HCO₃⁻',
    inWords:
      'Carbon dioxide, carbonate and water make two bicarbonates: two charges before, two charges after.',
  },
  assumes: 'The room’s air is the same all day. The trial starts on its settled daily cycle.',
};
