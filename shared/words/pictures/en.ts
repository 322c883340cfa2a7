export const en = {
  tests: {
    caption: 'What the keeper sees, and what is true',
    sentence: (tests: number, fall: string, by: string) =>
      `${tests} tests, the line through them, and the truth. The line falls by ${fall} dKH a day, give or take ${by}.`,
    key: 'Grey is the truth; dots and line are what tests show.',
    day: (day: number) => `${day} d`,
  },
  day: {
    caption: 'Light, pH and uptake through the day',
    light: 'light',
    taken: 'taken by corals, dKH an hour',
    range: (low: string, high: string) => `${low} to ${high}`,
    sentence: (light: string, ph: string, taken: string) =>
      `A day of this tank: light ${light}, pH ${ph}, corals take ${taken} dKH an hour. pH climbs while light lets algae take carbon dioxide, and falls in the dark.`,
  },
  flow: {
    caption: 'From the bag to the skeleton, in dKH of this tank',
    tank: 'tank',
    stream: (name: string, dkh: string) => `${name} ${dkh} dKH`,
    brought: (streams: string) => `Brought: ${streams}.`,
    nothingBrought: 'Nothing is brought.',
    taken: (streams: string) => `Taken: ${streams}.`,
    nothingTaken: 'Nothing is taken.',
    in: (days: string) => `In ${days} days.`,
    goes: (from: string, to: string, grams: string) =>
      `The tank goes from ${from} to ${to} dKH, and ${grams} g of skeleton are laid down.`,
  },
  species: {
    caption: 'Where the carbon is, at each pH',
    bicarbonate: 'bicarbonate',
    carbonate: 'carbonate',
    sentence: (ph: string, co2: string, bicarbonate: string, carbonate: string) =>
      `At pH ${ph} the tank’s carbon is ${co2} carbon dioxide, ${bicarbonate} bicarbonate and ${carbonate} carbonate.`,
    source: 'Lueker et al. 2000, at this tank’s temperature and salinity.',
  },
};
