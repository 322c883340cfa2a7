export const en = {
  title: 'Small tank, fast tank',
  about: 'The same corals, the same lamp, the same air; only the water is less.',
  plan: {
    title: 'The same corals in less water',
    question: 'How much faster does a small tank move?',
  },
  setting:
    'Living coral of {begin.corals.areaM2} sits in {begin.tank.volumeL} and takes alkalinity down by {begin.alkalinityFall} in {begin.days}. The room takes {begin.evaporation.litresPerDay} of fresh water, and nobody tops it off. Then the same corals move into {predicted.tank.volumeL}.',
  predict: {
    question: 'What does alkalinity do in the smaller tank?',
    choices: {
      same: 'It falls as before: they are the same corals.',
      faster: 'It falls faster, about in step with the water that is missing.',
      slower: 'It falls more slowly: there is less of it to take.',
    },
  },
  reveal:
    'In {predicted.days} the corals take {predicted.takenByCorals} from the small tank, {begin.takenByCorals} from the large one. Its salinity climbs to {predicted.salinityHighest}, the large one’s to {begin.salinityHighest}.',
  control: {
    invite: 'Move the volume of water.',
    now: 'In {now.tank.volumeL} the corals take {now.takenByCorals} and salinity reaches {now.salinityHighest}.',
  },
  ask: {
    question:
      'In a tank of {asked.tank.volumeL}, how far do {asked.days} without top-off and dose go?',
    answer:
      'Corals take {asked.takenByCorals}, though alkalinity only falls by {asked.alkalinityFall}: what evaporates leaves the rest behind in less water. Salinity reaches {asked.salinityHighest}. A small tank forgives a day, not a weekend.',
  },
  why: {
    first:
      'Corals take moles, and evaporation takes litres. Tests read a concentration: moles in each litre. The same bite out of less water is a larger change.',
    second:
      'Everything that reaches the water as an amount scales the same way: food, a spilled dose, a stuck pump. That is the whole case for a larger sump.',
  },
  equation: {
    text: 'change of a reading = amount taken ⁄ volume',
    inWords: 'The change of a reading is the amount taken divided by the volume.',
  },
  assumes: 'Rate and surface of the corals are invented but usual. No top-off in this lesson.',
};
