import { say } from '../words/faultFields';
import * as v from 'valibot';
import { additiveIds } from '../species/additives';
import { choice, part, quantity, type FieldText } from './quantity';
import { hourOfDay, MOST_DOSERS } from './dosing';
import { alkalinity, salinity } from './tank';

export const faultIds = [
  'topOffOn',
  'topOffOff',
  'sensorLow',
  'siphon',
  'strongMix',
  'slurry',
  'doserOn',
  'doserOff',
  'doserRate',
  'wrongNewWater',
  'heater',
  'powerCut',
  'roomCo2',
  'overdose',
] as const;

export type FaultId = (typeof faultIds)[number];

/** More than a keeper can have in one night. */
export const MOST_FAULTS = 12;

/** When a window opens and for how long; shared by what breaks and what is done about it. */
const window = {
  day: quantity({ ...say.window.day, unit: 'day', min: 1, max: 1830, slider: [1, 14], step: 1 }, 1),
  hour: hourOfDay(say.window.hour, 2),
};

const works = (text: FieldText) => choice(text, ['works', 'fails'], 'fails');

/** One thing that breaks. Which of the fields counts depends on the kind; see shared/faults. */
export const fault = part(say.fault, {
  kind: v.pipe(v.picklist(faultIds), v.title(say.fault.kind.title)),
  ...window,
  endsAfterH: quantity(
    { ...say.fault.endsAfterH, unit: 'h', min: 0.05, max: 8760, slider: [0.5, 48], step: 0.5 },
    6,
  ),
  secondSwitch: works(say.fault.secondSwitch),
  runLimit: works(say.fault.runLimit),
  sensorLowL: quantity(
    { ...say.fault.sensorLowL, unit: 'L', min: 0, max: 1000, slider: [0, 20], step: 0.5 },
    5,
  ),
  litresPerH: quantity(
    { ...say.fault.litresPerH, unit: 'L/h', min: 0, max: 1000, slider: [0, 30], step: 0.5 },
    6,
  ),
  times: quantity({ ...say.fault.times, unit: '×', min: 0, max: 50, slider: [0, 5], step: 0.1 }, 2),
  pump: quantity(
    { ...say.fault.pump, unit: '', min: 1, max: MOST_DOSERS, slider: [1, 4], step: 1 },
    1,
  ),
  newWaterSalinity: quantity(salinity(say.fault.newWaterSalinity), 30),
  newWaterDkh: quantity(alkalinity(say.fault.newWaterDkh), 12),
  endTempC: quantity(
    { ...say.fault.endTempC, unit: '°C', min: 10, max: 38, slider: [15, 35], step: 0.5 },
    31,
  ),
  degreesPerH: quantity(
    { ...say.fault.degreesPerH, unit: '°C/h', min: 0.05, max: 10, slider: [0.1, 3], step: 0.1 },
    0.5,
  ),
  cooling: choice(say.fault.cooling, ['none', 'estimated', 'own'], 'none'),
  coolingHours: quantity(
    { ...say.fault.coolingHours, unit: 'h', min: 0.5, max: 500, slider: [2, 72], step: 0.5 },
    16,
  ),
  gasPercent: quantity({ ...say.fault.gasPercent, unit: '%', min: 0, max: 100, step: 5 }, 10),
  co2Ppm: quantity(
    { ...say.fault.co2Ppm, unit: 'ppm', min: 200, max: 20000, slider: [400, 5000], step: 50 },
    2500,
  ),
  riseHours: quantity(
    { ...say.fault.riseHours, unit: 'h', min: 0, max: 720, slider: [0, 24], step: 0.5 },
    4,
  ),
  additive: v.optional(
    v.pipe(v.picklist(additiveIds), v.title(say.fault.additive.title)),
    'sodiumCarbonate',
  ),
  grams: quantity(
    { ...say.fault.grams, unit: 'g', min: 0, max: 100000, slider: [0, 200], step: 1 },
    50,
  ),
});

export const responseIds = [
  'aerate',
  'batteryAir',
  'co2Air',
  'carbonatedWater',
  'extraChange',
] as const;

export type ResponseId = (typeof responseIds)[number];

/** One thing that the keeper does about it. */
export const response = part(say.response, {
  kind: v.pipe(v.picklist(responseIds), v.title(say.response.kind.title)),
  ...window,
  hours: quantity(
    { ...say.response.hours, unit: 'h', min: 0.05, max: 8760, slider: [0.5, 72], step: 0.5 },
    24,
  ),
  kLaPerH: quantity(
    { ...say.response.kLaPerH, unit: '1/h', min: 0, max: 20, slider: [0, 10], step: 0.1 },
    4,
  ),
  co2Ppm: quantity(
    { ...say.response.co2Ppm, unit: 'ppm', min: 200, max: 5000, slider: [400, 5000], step: 100 },
    5000,
  ),
  co2GramsEach: quantity(
    { ...say.response.co2GramsEach, unit: 'g', min: 0, max: 10000, slider: [0, 20], step: 0.1 },
    2,
  ),
  portions: quantity(
    { ...say.response.portions, unit: '', min: 1, max: 24, slider: [1, 8], step: 1 },
    4,
  ),
  percent: quantity(
    { ...say.response.percent, unit: '%', min: 0, max: 90, slider: [0, 50], step: 1 },
    20,
  ),
});
