import * as v from 'valibot';
import { additiveIds } from '../species/additives';
import { choice, part, quantity, words } from './quantity';
import { alkalinity, calcium, magnesium, salinity } from './tank';

export const weekdayNames = ['Mo', 'Tu', 'We', 'Th', 'Fr', 'Sa', 'Su'] as const;

export const hourOfDay = (title: string, usual: number) =>
  quantity({ title, unit: 'h', min: 0, max: 23.99, slider: [0, 23], step: 0.5 }, usual);

export const topOff = part('Top-off', 'Replaces what evaporates, and may carry an additive.', {
  reservoirL: quantity(
    {
      title: 'Reservoir',
      unit: 'L',
      min: 0,
      max: 5000,
      slider: [0, 100],
      step: 1,
      help: '0 means no top-off at all.',
    },
    20,
  ),
  additive: choice(
    'Dissolved in it',
    ['none', 'calciumHydroxide', 'sodiumCarbonate', 'sodiumBicarbonate'],
    'none',
  ),
  gramsPerL: quantity(
    {
      title: 'Strength of the mix',
      unit: 'g/L',
      min: 0,
      max: 60,
      slider: [0, 2],
      step: 0.01,
      help: 'Weighed in at each refill. Calcium hydroxide beyond saturation stays on the bottom and serves the next refill.',
      measure: 'Kitchen scale; a level teaspoon is a guess.',
    },
    0,
  ),
  settledG: quantity(
    {
      title: 'Undissolved powder at the start',
      unit: 'g',
      min: 0,
      max: 5000,
      slider: [0, 100],
      step: 1,
      help: 'Calcium hydroxide on the bottom of the reservoir, which keeps refills saturated while it lasts.',
    },
    0,
  ),
  saturationPercent: quantity(
    {
      title: 'Limewater strength at saturation',
      unit: '%',
      min: 50,
      max: 120,
      slider: [80, 110],
      step: 1,
      help: '100 % is 1.50 g/L at 25 °C; handbooks differ by 10 %.',
    },
    100,
  ),
  pumpLPerH: quantity(
    {
      title: 'Top-off pump',
      unit: 'L/h',
      min: 0.01,
      max: 5000,
      slider: [0.1, 20],
      step: 0.1,
      measure: 'Seconds to fill a one-litre jug: 3600 divided by them.',
    },
    3,
  ),
  deadBandL: quantity(
    {
      title: 'Drop that starts the pump',
      unit: 'L',
      min: 0.01,
      max: 100,
      slider: [0.05, 2],
      step: 0.05,
      help: 'Dead band of the level sensor, as volume.',
    },
    0.5,
  ),
  refillEveryDays: quantity(
    {
      title: 'Refilled every',
      unit: 'days',
      min: 0,
      max: 365,
      slider: [0, 30],
      step: 1,
      help: '0 means never: see how long it lasts.',
    },
    2,
  ),
  refillHour: hourOfDay('Refilled at', 18),
  lossPercentPerDay: quantity(
    {
      title: 'Limewater lost to the air',
      unit: '%/day',
      min: 0,
      max: 20,
      slider: [0, 10],
      step: 0.1,
      help: 'CO₂ turns limewater to chalk: about 0.5 under a lid (0–2), 5 in an open reservoir (2–13).',
    },
    0.5,
  ),
  secondSwitchL: quantity(
    {
      title: 'Second switch, above normal level',
      unit: 'L',
      min: 0,
      max: 500,
      slider: [0, 20],
      step: 0.5,
      help: 'Cuts the pump at this much too much water; 0 means there is none.',
    },
    0,
  ),
  runLimitMinPerH: quantity(
    {
      title: 'Run-time limit, in an hour',
      unit: 'min',
      min: 0,
      max: 60,
      step: 1,
      help: '0 means none.',
    },
    0,
  ),
  runLimitMinPerDay: quantity(
    {
      title: 'Run-time limit, in a day',
      unit: 'min',
      min: 0,
      max: 1440,
      slider: [0, 240],
      step: 1,
      help: '0 means none.',
    },
    0,
  ),
  siphonLPerH: quantity(
    {
      title: 'Siphon after the pump stops',
      unit: 'L/h',
      min: 0,
      max: 500,
      slider: [0, 20],
      step: 0.5,
      help: 'An outlet below the reservoir’s water goes on running; an anti-siphon break makes it 0.',
    },
    0,
  ),
});

export const ingredient = part('Ingredient', '', {
  additive: v.pipe(v.picklist(additiveIds), v.title('Substance')),
  gramsPerL: quantity(
    { title: 'Strength', unit: 'g/L', min: 0, max: 600, slider: [0, 200], step: 1 },
    50,
  ),
});

export const schedule = part('Schedule', 'When in the day the dose goes in.', {
  way: choice(
    'Dosed',
    ['spread', 'doses', 'everyMinutes'],
    'spread',
    'spread: a steady drip; doses: so many a day; everyMinutes: one dose every so many minutes.',
  ),
  fromHour: hourOfDay('from', 0),
  hours: quantity({ title: 'for', unit: 'h', min: 0.25, max: 24, step: 0.25 }, 24),
  doses: quantity(
    { title: 'Doses in that time', unit: '', min: 1, max: 96, slider: [1, 24], step: 1 },
    4,
  ),
  everyMinutes: quantity(
    { title: 'Every', unit: 'min', min: 5, max: 720, slider: [5, 240], step: 5 },
    60,
  ),
  pumpMlPerMin: quantity(
    { title: 'Pump', unit: 'mL/min', min: 0.1, max: 5000, slider: [1, 100], step: 0.5 },
    20,
  ),
  weekdays: v.optional(
    v.pipe(
      v.array(v.picklist(weekdayNames)),
      v.maxLength(7),
      v.title('Only on'),
      v.description('Empty means every day. The trial starts on a Monday.'),
    ),
    [],
  ),
});

/** More pumps than any tank has. */
export const MOST_DOSERS = 12;

export const doser = part('Dosing pump', 'One bottle, one pump.', {
  name: words('Name', 60),
  recipe: v.pipe(v.array(ingredient), v.maxLength(8), v.title('Recipe of the stock')),
  mlPerDay: quantity(
    {
      title: 'Dose',
      unit: 'mL/day',
      min: 0,
      max: 100000,
      slider: [0, 200],
      step: 1,
      measure: 'Run the pump into a measuring cylinder for a day’s setting.',
    },
    0,
  ),
  schedule: v.optional(schedule, {}),
  stockL: quantity(
    { title: 'Bottle', unit: 'L', min: 0.05, max: 1000, slider: [0.5, 10], step: 0.5 },
    2,
  ),
});

export const saltMix = part(
  'Salt mix',
  'What the new water holds when mixed to a stated salinity.',
  {
    name: v.optional(words('Name', 60), 'low-alkalinity mix'),
    alkalinityDkh: quantity(alkalinity('Alkalinity'), 8),
    calciumMgPerL: quantity(calcium('Calcium'), 420),
    magnesiumMgPerL: quantity(magnesium('Magnesium'), 1300),
    atSalinityPractical: quantity(salinity('Stated at salinity'), 35),
  },
);

export const waterChanges = part('Water changes', 'A batch out, the same volume of new water in.', {
  percent: quantity(
    { title: 'Each change', unit: '%', min: 0, max: 90, slider: [0, 50], step: 1 },
    0,
  ),
  everyDays: quantity(
    { title: 'Every', unit: 'days', min: 0.5, max: 365, slider: [1, 30], step: 0.5 },
    7,
  ),
  hour: hourOfDay('At', 12),
  continuousLPerDay: quantity(
    {
      title: 'Continuous change',
      unit: 'L/day',
      min: 0,
      max: 5000,
      slider: [0, 50],
      step: 0.5,
      help: 'As much new water in as old water out, all day.',
    },
    0,
  ),
  newWater: choice(
    'New water is',
    ['aerated', 'fresh'],
    'aerated',
    'aerated: in balance with the room air; fresh: at the pH set below.',
  ),
  freshPhNbs: quantity(
    { title: 'pH of fresh mix', unit: 'pH', min: 6.5, max: 9.5, slider: [7.5, 8.8], step: 0.05 },
    8.3,
  ),
  newWaterTempC: quantity(
    { title: 'Temperature of new water', unit: '°C', min: 5, max: 38, slider: [15, 30], step: 0.5 },
    25,
  ),
  salinityPractical: quantity(salinity('Mixed to salinity'), 35),
  salt: v.optional(saltMix, {}),
});

export const addition = part('One-off addition', 'Dissolved and poured in at once.', {
  day: quantity({ title: 'On day', unit: 'day', min: 1, max: 1830, slider: [1, 60], step: 1 }, 1),
  hour: hourOfDay('At', 10),
  additive: v.pipe(v.picklist(additiveIds), v.title('Substance')),
  grams: quantity(
    { title: 'Amount', unit: 'g', min: 0, max: 100000, slider: [0, 200], step: 0.1 },
    0,
  ),
});
