import { say } from '../words/dosing';
import * as v from 'valibot';
import { additiveIds } from '../species/additives';
import { choice, part, quantity, words, type FieldText } from './quantity';
import { alkalinity, calcium, magnesium, salinity } from './tank';
import { weekdayNames } from './weekdayNames';

export const hourOfDay = (text: FieldText, usual: number) =>
  quantity({ ...text, unit: 'h', min: 0, max: 23.99, slider: [0, 23], step: 0.5 }, usual);

export const topOff = part(say.topOff, {
  reservoirL: quantity(
    { ...say.topOff.reservoirL, unit: 'L', min: 0, max: 5000, slider: [0, 100], step: 1 },
    20,
  ),
  additive: choice(
    say.topOff.additive,
    ['none', 'calciumHydroxide', 'sodiumCarbonate', 'sodiumBicarbonate'],
    'none',
  ),
  gramsPerL: quantity(
    { ...say.topOff.gramsPerL, unit: 'g/L', min: 0, max: 60, slider: [0, 2], step: 0.01 },
    0,
  ),
  settledG: quantity(
    { ...say.topOff.settledG, unit: 'g', min: 0, max: 5000, slider: [0, 100], step: 1 },
    0,
  ),
  saturationPercent: quantity(
    { ...say.topOff.saturationPercent, unit: '%', min: 50, max: 120, slider: [80, 110], step: 1 },
    100,
  ),
  pumpLPerH: quantity(
    { ...say.topOff.pumpLPerH, unit: 'L/h', min: 0.01, max: 5000, slider: [0.1, 20], step: 0.1 },
    3,
  ),
  deadBandL: quantity(
    { ...say.topOff.deadBandL, unit: 'L', min: 0.01, max: 100, slider: [0.05, 2], step: 0.05 },
    0.5,
  ),
  refillEveryDays: quantity(
    { ...say.topOff.refillEveryDays, unit: 'days', min: 0, max: 365, slider: [0, 30], step: 1 },
    2,
  ),
  refillHour: hourOfDay(say.topOff.refillHour, 18),
  lossPercentPerDay: quantity(
    { ...say.topOff.lossPercentPerDay, unit: '%/day', min: 0, max: 20, slider: [0, 10], step: 0.1 },
    0.5,
  ),
  secondSwitchL: quantity(
    { ...say.topOff.secondSwitchL, unit: 'L', min: 0, max: 500, slider: [0, 20], step: 0.5 },
    0,
  ),
  runLimitMinPerH: quantity(
    { ...say.topOff.runLimitMinPerH, unit: 'min', min: 0, max: 60, step: 1 },
    0,
  ),
  runLimitMinPerDay: quantity(
    { ...say.topOff.runLimitMinPerDay, unit: 'min', min: 0, max: 1440, slider: [0, 240], step: 1 },
    0,
  ),
  siphonLPerH: quantity(
    { ...say.topOff.siphonLPerH, unit: 'L/h', min: 0, max: 500, slider: [0, 20], step: 0.5 },
    0,
  ),
});

export const ingredient = part(say.ingredient, {
  additive: v.pipe(v.picklist(additiveIds), v.title(say.ingredient.additive.title)),
  gramsPerL: quantity(
    { ...say.ingredient.gramsPerL, unit: 'g/L', min: 0, max: 600, slider: [0, 200], step: 1 },
    50,
  ),
});

export const schedule = part(say.schedule, {
  way: choice(say.schedule.way, ['spread', 'doses', 'everyMinutes'], 'spread'),
  fromHour: hourOfDay(say.schedule.fromHour, 0),
  hours: quantity({ ...say.schedule.hours, unit: 'h', min: 0.25, max: 24, step: 0.25 }, 24),
  doses: quantity(
    { ...say.schedule.doses, unit: '', min: 1, max: 96, slider: [1, 24], step: 1 },
    4,
  ),
  everyMinutes: quantity(
    { ...say.schedule.everyMinutes, unit: 'min', min: 5, max: 720, slider: [5, 240], step: 5 },
    60,
  ),
  pumpMlPerMin: quantity(
    {
      ...say.schedule.pumpMlPerMin,
      unit: 'mL/min',
      min: 0.1,
      max: 5000,
      slider: [1, 100],
      step: 0.5,
    },
    20,
  ),
  weekdays: v.optional(
    v.pipe(
      v.array(v.picklist(weekdayNames)),
      v.maxLength(7),
      v.title(say.schedule.weekdays.title),
      v.description(say.schedule.weekdays.help),
    ),
    [],
  ),
});

/** More pumps than any tank has. */
export const MOST_DOSERS = 12;

export const doser = part(say.doser, {
  name: words(say.doser.name, 60),
  recipe: v.pipe(v.array(ingredient), v.maxLength(8), v.title(say.doser.recipe.title)),
  mlPerDay: quantity(
    { ...say.doser.mlPerDay, unit: 'mL/day', min: 0, max: 100000, slider: [0, 200], step: 1 },
    0,
  ),
  schedule: v.optional(schedule, {}),
  stockL: quantity(
    { ...say.doser.stockL, unit: 'L', min: 0.001, max: 1000, slider: [0.5, 10], step: 0.5 },
    2,
  ),
});

export const saltMix = part(say.saltMix, {
  name: v.optional(words(say.saltMix.name, 60), 'low-alkalinity mix'),
  alkalinityDkh: quantity(alkalinity(say.saltMix.alkalinityDkh), 7.5),
  calciumMgPerL: quantity(calcium(say.saltMix.calciumMgPerL), 420),
  magnesiumMgPerL: quantity(magnesium(say.saltMix.magnesiumMgPerL), 1300),
  atSalinityPractical: quantity(salinity(say.saltMix.atSalinityPractical), 35),
});

export const waterChanges = part(say.waterChanges, {
  percent: quantity(
    { ...say.waterChanges.percent, unit: '%', min: 0, max: 90, slider: [0, 50], step: 1 },
    0,
  ),
  everyDays: quantity(
    { ...say.waterChanges.everyDays, unit: 'days', min: 0.5, max: 365, slider: [1, 30], step: 0.5 },
    7,
  ),
  hour: hourOfDay(say.waterChanges.hour, 12),
  continuousLPerDay: quantity(
    {
      ...say.waterChanges.continuousLPerDay,
      unit: 'L/day',
      min: 0,
      max: 5000,
      slider: [0, 50],
      step: 0.5,
    },
    0,
  ),
  newWater: choice(say.waterChanges.newWater, ['aerated', 'fresh'], 'aerated'),
  freshPhNbs: quantity(
    {
      ...say.waterChanges.freshPhNbs,
      unit: 'pH',
      min: 6.5,
      max: 9.5,
      slider: [7.5, 8.8],
      step: 0.05,
    },
    8.3,
  ),
  newWaterTempC: quantity(
    { ...say.waterChanges.newWaterTempC, unit: '°C', min: 5, max: 38, slider: [15, 30], step: 0.5 },
    25,
  ),
  salinityPractical: quantity(salinity(say.waterChanges.salinityPractical), 35),
  salt: v.optional(saltMix, {}),
});

export const addition = part(say.addition, {
  day: quantity(
    { ...say.addition.day, unit: 'day', min: 1, max: 1830, slider: [1, 60], step: 1 },
    1,
  ),
  hour: hourOfDay(say.addition.hour, 10),
  additive: v.pipe(v.picklist(additiveIds), v.title(say.addition.additive.title)),
  grams: quantity(
    { ...say.addition.grams, unit: 'g', min: 0, max: 100000, slider: [0, 200], step: 0.1 },
    0,
  ),
});
