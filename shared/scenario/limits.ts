import { part, quantity } from './quantity';

/** Usual bands: common practice, no source. The keeper changes every one. */
const band = (title: string, unit: string, min: number, max: number, step: number) => ({
  low: (usual: number) => quantity({ title: `${title}, low`, unit, min, max, step }, usual),
  high: (usual: number) => quantity({ title: `${title}, high`, unit, min, max, step }, usual),
});

const alkalinity = band('Alkalinity', 'dKH', 0.5, 30, 0.1);
const ph = band('pH', 'pH', 6.5, 10, 0.05);
const calcium = band('Calcium', 'mg/L', 50, 1000, 5);
const magnesium = band('Magnesium', 'mg/L', 100, 3000, 10);
const salinity = band('Salinity', 'ppt', 5, 45, 0.1);

export const limits = part('Your limits', 'The band you want to stay inside (common practice).', {
  alkalinityLowDkh: alkalinity.low(8),
  alkalinityHighDkh: alkalinity.high(12),
  alkalinityChangeDkhPerDay: quantity(
    { title: 'Alkalinity change in a day', unit: 'dKH', min: 0.05, max: 10, step: 0.05 },
    1,
  ),
  phLowNbs: ph.low(7.8),
  phHighNbs: ph.high(8.6),
  phHarmNbs: quantity(
    {
      title: 'pH where harm is expected',
      unit: 'pH',
      min: 8,
      max: 10,
      slider: [8.5, 9.5],
      step: 0.05,
      help: 'Drills say when it is passed.',
    },
    9,
  ),
  phChangePerH: quantity(
    { title: 'pH change in an hour', unit: 'pH', min: 0.01, max: 3, slider: [0.05, 1], step: 0.05 },
    0.3,
  ),
  unionisedAmmoniaMgPerL: quantity(
    {
      title: 'Un-ionised ammonia, high',
      unit: 'mg/L',
      min: 0.001,
      max: 5,
      slider: [0.01, 0.2],
      step: 0.01,
      help: 'The toxic share of total ammonia grows with pH: enter the tank’s ammonia reading.',
    },
    0.05,
  ),
  omegaHigh: quantity(
    {
      title: 'Saturation (Ω), high',
      unit: '',
      min: 2,
      max: 60,
      slider: [5, 20],
      step: 0.5,
      help: 'From about 10 on chalk may fall out on surfaces (illustration, not prediction).',
    },
    10,
  ),
  calciumLowMgPerL: calcium.low(400),
  calciumHighMgPerL: calcium.high(450),
  magnesiumLowMgPerL: magnesium.low(1250),
  magnesiumHighMgPerL: magnesium.high(1400),
  salinityLowPractical: salinity.low(34),
  salinityHighPractical: salinity.high(36),
});
