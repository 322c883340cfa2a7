export const en = {
  title: 'The tank, drawn',
  larger:
    'Drawn from the trial hour by hour. Arrows are as wide as what moves; the water line of the sump is drawn between its rim and as far below; corals are drawn far larger than life.',
  play: 'Play',
  pause: 'Pause',
  back: 'An hour back',
  forth: 'An hour on',
  reservoir: 'reservoir',
  sump: 'sump',
  bottles: 'bottles',
  sentence: (moment: string, light: string, alkalinity: string, ph: string) =>
    `${moment}, ${light}: ${alkalinity}, pH ${ph}.`,
  lightOn: 'light on',
  lightDim: 'light dimmed',
  lightOff: 'light off',
  hour: (took: string, brought: string) => `In this hour ${took} was taken and ${brought} came in.`,
  nothingMoves: 'In this hour no alkalinity moves.',
  co2In: (room: string, water: string) =>
    `CO₂ goes into the water (room ${room}, water ${water} µatm).`,
  co2Out: (room: string, water: string) =>
    `CO₂ leaves the water (room ${room}, water ${water} µatm).`,
  co2Rests: 'CO₂ of air and water are in balance.',
  reservoirHolds: (litres: string, topped: string) =>
    `The reservoir holds ${litres}; ${topped} of it went in.`,
  empty: 'The reservoir is empty.',
  grown: (grams: string) => `Corals have laid down ${grams} of skeleton.`,
  runsOver: 'The water stands at the rim.',
  high: 'pH is above your limit.',
  harm: 'pH is above where you expect harm.',
  low: 'pH is below your limit.',
  failing: (what: string) => `Failing now: ${what}.`,
};
