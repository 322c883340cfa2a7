import * as v from 'valibot';
import { additiveIds } from '../species/additives';
import { choice, part, quantity } from './quantity';
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
  day: quantity({ title: 'On day', unit: 'day', min: 1, max: 1830, slider: [1, 14], step: 1 }, 1),
  hour: hourOfDay('At', 2),
};

const works = (title: string, help: string) => choice(title, ['works', 'fails'], 'fails', help);

/** One thing that breaks. Which of the fields counts depends on the kind; see shared/faults. */
export const fault = part('Fault', 'A property of a device over a stretch of time.', {
  kind: v.pipe(v.picklist(faultIds), v.title('What breaks')),
  ...window,
  hours: quantity(
    {
      title: 'Noticed after',
      unit: 'h',
      min: 0.05,
      max: 8760,
      slider: [0.5, 48],
      step: 0.5,
      help: 'The fault ends then.',
    },
    6,
  ),
  secondSwitch: works('Second switch', 'A welded relay passes it by, unless it cuts the mains.'),
  runLimit: works('Run-time limit', 'In the controller it is of no use when the relay is stuck.'),
  sensorLowL: quantity(
    { title: 'Level reads low by', unit: 'L', min: 0, max: 1000, slider: [0, 20], step: 0.5 },
    5,
  ),
  litresPerH: quantity(
    { title: 'Siphon', unit: 'L/h', min: 0, max: 1000, slider: [0, 30], step: 0.5 },
    6,
  ),
  times: quantity(
    { title: 'Times what was meant', unit: '×', min: 0, max: 50, slider: [0, 5], step: 0.1 },
    2,
  ),
  pump: quantity(
    { title: 'Dosing pump number', unit: '', min: 1, max: MOST_DOSERS, slider: [1, 4], step: 1 },
    1,
  ),
  newWaterSalinity: quantity(salinity('New water mixed to'), 30),
  newWaterDkh: quantity(alkalinity('New water mixes to'), 12),
  endTempC: quantity(
    { title: 'Temperature it goes to', unit: '°C', min: 10, max: 38, slider: [15, 35], step: 0.5 },
    31,
  ),
  degreesPerH: quantity(
    { title: 'How fast', unit: '°C/h', min: 0.05, max: 10, slider: [0.1, 3], step: 0.1 },
    0.5,
  ),
  gasPercent: quantity(
    {
      title: 'Gas exchange that is left',
      unit: '%',
      min: 0,
      max: 100,
      step: 5,
      help: 'A still surface exchanges a little (common practice: 5–10 %).',
    },
    10,
  ),
  co2Ppm: quantity(
    {
      title: 'Room CO₂ it goes to',
      unit: 'ppm',
      min: 200,
      max: 20000,
      slider: [400, 5000],
      step: 50,
    },
    2500,
  ),
  riseHours: quantity(
    { title: 'Rises over', unit: 'h', min: 0, max: 720, slider: [0, 24], step: 0.5 },
    4,
  ),
  additive: v.optional(v.pipe(v.picklist(additiveIds), v.title('Substance')), 'sodiumCarbonate'),
  grams: quantity(
    { title: 'Amount', unit: 'g', min: 0, max: 100000, slider: [0, 200], step: 1 },
    50,
  ),
});

export const responseIds = ['aerate', 'co2Air', 'carbonatedWater', 'extraChange'] as const;

export type ResponseId = (typeof responseIds)[number];

/** One thing that the keeper does about it. */
export const response = part('Response', 'What the keeper does about a fault.', {
  kind: v.pipe(v.picklist(responseIds), v.title('What is done')),
  ...window,
  hours: quantity(
    { title: 'For', unit: 'h', min: 0.05, max: 8760, slider: [0.5, 72], step: 0.5 },
    24,
  ),
  kLaPerH: quantity(
    { title: 'Aeration (kLa)', unit: '1/h', min: 0, max: 20, slider: [0, 10], step: 0.1 },
    4,
  ),
  co2Ppm: quantity(
    {
      title: 'CO₂ of the air blown in',
      unit: 'ppm',
      min: 200,
      max: 50000,
      slider: [400, 10000],
      step: 100,
    },
    5000,
  ),
  co2GramsEach: quantity(
    {
      title: 'CO₂ in each portion',
      unit: 'g',
      min: 0,
      max: 10000,
      slider: [0, 20],
      step: 0.1,
      help: 'A litre of strongly carbonated plain water holds about 6 g (common practice).',
    },
    2,
  ),
  portions: quantity({ title: 'Portions', unit: '', min: 1, max: 24, slider: [1, 8], step: 1 }, 4),
  percent: quantity(
    { title: 'Water changed', unit: '%', min: 0, max: 90, slider: [0, 50], step: 1 },
    20,
  ),
});
