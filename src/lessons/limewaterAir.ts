import type { Lesson } from './lesson';
import { lessonScenario } from './lessonScenario';
import { measures } from './measures';

export const limewaterAir: Lesson = {
  id: 'limewater-air',
  title: 'Limewater, pH and the room’s air',
  about: 'Limewater needs carbon dioxide, and only the air can bring it.',
  scenario: lessonScenario({
    title: 'Limewater over a quiet surface',
    question: 'Limewater holds the alkalinity. What decides pH?',
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
  setting:
    'Limewater of {begin.topOff.gramsPerL} goes into {begin.tank.volumeL} as water evaporates, and the corals use {begin.useFirstDay}. Air reaches the water slowly (kLa {begin.gas.kLaPerH}), and pH peaks at {begin.phHighest}. Now the skimmer is cleaned and the surface breaks: air reaches it much faster (kLa {predicted.gas.kLaPerH}).',
  predict: {
    question: 'Nothing else is changed. What does more air do?',
    choices: [
      { id: 'phUp', text: 'pH peaks higher: more air drives carbon dioxide out.' },
      { id: 'phDown', text: 'pH peaks lower: more air brings carbon dioxide in.' },
      { id: 'alkalinity', text: 'pH stays; alkalinity sinks.' },
    ],
    right: 'phDown',
    changes: [[['gas', 'kLaPerH'], 3]],
    judge: ({ begin, predicted }) => {
      const rise = measures.phHighest.of(predicted) - measures.phHighest.of(begin);
      return Math.abs(rise) < 0.03 ? 'alkalinity' : rise > 0 ? 'phUp' : 'phDown';
    },
  },
  reveal:
    'With more air pH peaks at {predicted.phHighest} instead of {begin.phHighest}. Alkalinity ends at {predicted.alkalinityEnd} against {begin.alkalinityEnd}: the same limewater brings almost the same alkalinity, whatever the air does.',
  control: {
    path: ['topOff', 'gramsPerL'],
    range: [0, 1.5],
    invite:
      'Over the quiet surface again: move the strength of the limewater, and watch the point of the tank in the picture of the species.',
    now: 'With {now.topOff.gramsPerL} pH runs from {now.phLowest} to {now.phHighest}, and alkalinity ends at {now.alkalinityEnd}.',
  },
  ask: {
    question:
      'The windows stay shut and the room has {asked.room.co2Ppm} of carbon dioxide. Is that bad for a tank on limewater?',
    changes: [[['room', 'co2Ppm'], 1200]],
    answer:
      'Not always: pH now peaks at {asked.phHighest} where it was {begin.phHighest}. Stale air feeds the limewater. Its lowest, by night, is {asked.phLowest}.',
  },
  why: [
    'Limewater is hydroxide. Corals build with carbonate, so the hydroxide has to find carbon dioxide first. It takes what is dissolved in the water, and the water then has less than the room: the tank breathes in, not out.',
    'How high pH climbs depends on how fast the room can refill that gap. The carbonate species shift with it: the higher the pH, the more carbonate and the less carbon dioxide. More air, or staler air, lowers pH; stronger limewater raises it.',
  ],
  equation: {
    text: 'OH⁻ + CO₂ → HCO₃⁻',
    inWords: 'One hydroxide and one carbon dioxide make one bicarbonate.',
  },
  charts: ['ph_nbs', 'alkalinity_dkh', 'pco2_uatm'],
  pictures: ['species', 'day'],
  assumes:
    'kLa says how fast air finds its balance with the water, for each hour; nobody knows their own, the bench can solve it from readings. pH as a probe reads it (NBS); a real probe strays by a tenth. Calcium hydroxide: gloves and goggles.',
};
