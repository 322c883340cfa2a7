export const en = {
  title: 'Charts',
  cursor: 'Time cursor',
  stretch: 'Stretch of time shown',
  whole: 'Whole trial',
  week: '7 days',
  twoDays: '2 days',
  folded: 'Saturation, carbon, CO₂, volume, reservoir, nitrate',
  alkalinity: 'Alkalinity',
  ph: 'pH',
  calcium: 'Calcium',
  salinity: 'Salinity',
  omega: 'Saturation (Ω aragonite); growth laws measured at 2–4',
  dic: 'Inorganic carbon (DIC)',
  pco2: 'CO₂ in the water',
  volume: 'Volume',
  reservoir: 'Reservoir',
  nitrate: 'Nitrate',
  reads: (title: string, atCursor: string, shapes: string) =>
    `${title} over time: ${atCursor} at the time cursor; ${shapes}`,
  shape: (name: string, from: string, to: string, low: string, high: string) =>
    `${name} goes from ${from} to ${to}, between ${low} and ${high}`,
  day: (day: string) => `day ${day}`,
  start: 'start',
  save: 'Save',
  asPicture: (title: string) => ` ${title} as a picture`,
  notMade: (why: string) => `The picture could not be made: ${why}. Try the other kind.`,
  noPicture: 'the browser drew no picture',
  madeBy:
    'Computed by Paper Reef, a simulation, not a measurement. Carbonate constants: Lueker et al. 2000; pH on the NBS scale (Takahashi et al. 1982).',
  use: (dkhPerDay: string) => `use ${dkhPerDay} dKH/day at the start`,
  rate: (mmol: string, area: string) => `${mmol} mmol/m²/day on ${area} m²`,
  plan: (name: string, water: string, use: string, ppm: string, kLa: string) =>
    `${name}: ${water}; ${use}; room CO₂ ${ppm} ppm, kLa ${kLa} per hour.`,
  fanKey: 'dots: your readings ± σ · line: the fitted tank · wash: 19 times in 20',
  fan: (count: string, from: string, to: string, by: string) =>
    `Alkalinity in dKH: ${count} readings, and the forecast from ${from} to ${to} ± ${by}`,
  tableCsv: 'CSV of this table',
};
