export const en = {
  title: 'Limewater, pH and the room’s air',
  about: 'Limewater needs carbon dioxide, and only the air can bring it.',
  plan: {
    title: 'Limewater over a quiet surface',
    question: 'Limewater holds the alkalinity. What decides pH?',
  },
  setting:
    'Limewater of {begin.topOff.gramsPerL} goes into {begin.tank.volumeL} as water evaporates, and the corals use {begin.useFirstDay}. Air reaches the water slowly (kLa {begin.gas.kLaPerH}), and pH peaks at {begin.phHighest}. Now the skimmer is cleaned and the surface breaks: air reaches it much faster (kLa {predicted.gas.kLaPerH}).',
  predict: {
    question: 'Nothing else is changed. What does more air do?',
    choices: {
      phUp: 'pH peaks higher: more air drives carbon dioxide out.',
      phDown: 'pH peaks lower: more air brings carbon dioxide in.',
      alkalinity: 'pH stays; alkalinity sinks.',
    },
  },
  reveal:
    'With more air pH peaks at {predicted.phHighest} instead of {begin.phHighest}. Alkalinity ends at {predicted.alkalinityEnd} against {begin.alkalinityEnd}: the same limewater brings almost the same alkalinity, whatever the air does.',
  control: {
    invite:
      'Over the quiet surface again: move the strength of the limewater, and watch the point of the tank in the picture of the species.',
    now: 'With {now.topOff.gramsPerL} pH runs from {now.phLowest} to {now.phHighest}, and alkalinity ends at {now.alkalinityEnd}.',
  },
  ask: {
    question:
      'The windows stay shut and the room has {asked.room.co2Ppm} of carbon dioxide. Is that bad for a tank on limewater?',
    answer:
      'Not always: pH now peaks at {asked.phHighest} where it was {begin.phHighest}. Stale air feeds the limewater. Its lowest, by night, is {asked.phLowest}.',
  },
  why: {
    first:
      'Limewater is hydroxide. Corals build with carbonate, so the hydroxide has to find carbon dioxide first. It takes what is dissolved in the water, and the water then has less than the room: the tank breathes in, not out.',
    second:
      'How high pH climbs depends on how fast the room can refill that gap. The carbonate species shift with it: the higher the pH, the more carbonate and the less carbon dioxide. More air, or staler air, lowers pH; stronger limewater raises it.',
  },
  equation: {
    text: 'OH⁻ + CO₂ → HCO₃⁻',
    inWords: 'One hydroxide and one carbon dioxide make one bicarbonate.',
  },
  assumes:
    'kLa says how fast air finds its balance with the water, for each hour; nobody knows their own, the bench can solve it from readings. pH as a probe reads it (NBS); a real probe strays by a tenth. Calcium hydroxide: gloves and goggles.',
};
