import { salinityFromSpecificGravity2525 } from '../seawater/specificGravity';
import { choice, part, quantity, required } from './quantity';

const gravityMistake = (value: number): string | undefined =>
  value > 1 && value < 1.05
    ? `${value} reads like a specific gravity (25/25); as salinity that is ${salinityFromSpecificGravity2525(value).toFixed(1)}`
    : undefined;

export const salinity = (title: string) => ({
  title,
  unit: 'ppt',
  min: 5,
  max: 45,
  slider: [30, 38] as const,
  step: 0.1,
  measure: 'Conductivity meter or refractometer, checked with a 35 ppt standard.',
  mistake: gravityMistake,
});

export const alkalinity = (title: string) => ({
  title,
  unit: 'dKH',
  min: 0.5,
  max: 30,
  slider: [5, 14] as const,
  step: 0.1,
  measure: 'Alkalinity test, at the same hour each time.',
});

export const calcium = (title: string) => ({
  title,
  unit: 'mg/L',
  min: 50,
  max: 1000,
  slider: [340, 520] as const,
  step: 5,
});

export const magnesium = (title: string) => ({
  title,
  unit: 'mg/L',
  min: 100,
  max: 3000,
  slider: [1000, 1600] as const,
  step: 10,
});

export const tank = part('Tank', 'The water as it is at the first hour.', {
  volumeL: required({
    title: 'Net water volume',
    unit: 'L',
    min: 5,
    max: 50000,
    slider: [20, 1500],
    step: 5,
    help: 'Tank, sump and pipes, less rock and sand.',
    measure:
      'Not the rated volume: add a weighed amount of salt and read the rise in salinity, or tape measure less rock.',
  }),
  alkalinityDkh: required(alkalinity('Alkalinity')),
  calciumMgPerL: quantity(calcium('Calcium'), 430),
  magnesiumMgPerL: quantity(magnesium('Magnesium'), 1300),
  salinityPractical: quantity(salinity('Salinity'), 35),
  tempC: quantity(
    { title: 'Temperature', unit: '°C', min: 10, max: 38, slider: [20, 30], step: 0.1 },
    25.5,
  ),
  nitrateMgPerL: quantity(
    { title: 'Nitrate', unit: 'mg/L', min: 0, max: 500, slider: [0, 50], step: 0.5 },
    5,
  ),
  phosphateMgPerL: quantity(
    { title: 'Phosphate', unit: 'mg/L', min: 0, max: 20, slider: [0, 1], step: 0.01 },
    0.05,
  ),
  ammoniaMgPerL: quantity(
    {
      title: 'Total ammonia',
      unit: 'mg/L',
      min: 0,
      max: 20,
      slider: [0, 2],
      step: 0.01,
      help: 'As NH₃ and NH₄⁺ together, counted as ammonia (NH₃).',
    },
    0,
  ),
});

export const start = part('How the trial starts', 'What sets pH at the first hour.', {
  carbon: choice(
    'Starting pH',
    ['settledCycle', 'airEquilibrium', 'measuredPh'],
    'settledCycle',
    'The settled daily cycle of this plan, balance with the room air, or a pH you measured.',
  ),
  phNbs: quantity(
    {
      title: 'Measured pH at the start',
      unit: 'pH',
      min: 6.5,
      max: 9.5,
      slider: [7.6, 8.6],
      step: 0.01,
      help: 'As a hobby probe reads (NBS scale). Used only when the trial starts from a measured pH.',
    },
    8.1,
  ),
  omegaReference: quantity(
    {
      title: 'Saturation that the typed use belongs to',
      unit: 'Ω',
      min: 0,
      max: 20,
      slider: [0, 8],
      step: 0.01,
      help: '0 means the mean of this trial’s own first day. A trial that starts from another plan’s water takes that plan’s.',
    },
    0,
  ),
  clockHour: quantity(
    {
      title: 'Clock time at the start',
      unit: 'h',
      min: 0,
      max: 23,
      step: 1,
      help: 'Hour of the day at which the trial begins.',
    },
    0,
  ),
});
