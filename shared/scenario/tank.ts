import { figure } from '../words/figure';
import { say } from '../words/tank';
import { salinityFromSpecificGravity2525 } from '../seawater/specificGravity';
import { choice, part, quantity, required } from './quantity';

const gravityMistake = (value: number): string | undefined =>
  value > 1 && value < 1.05
    ? say.measured.readsLikeGravity(
        figure(value),
        figure(salinityFromSpecificGravity2525(value), 1),
      )
    : undefined;

export const salinity = (title: string) => ({
  title,
  unit: 'ppt',
  min: 5,
  max: 45,
  slider: [30, 38] as const,
  step: 0.1,
  measure: say.measured.salinity,
  mistake: gravityMistake,
});

export const alkalinity = (title: string) => ({
  title,
  unit: 'dKH',
  min: 0.5,
  max: 30,
  slider: [5, 14] as const,
  step: 0.1,
  measure: say.measured.alkalinity,
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

export const tank = part(say.tank, {
  volumeL: required({
    ...say.tank.volumeL,
    unit: 'L',
    min: 5,
    max: 50000,
    slider: [20, 1500],
    step: 5,
  }),
  alkalinityDkh: required(alkalinity(say.tank.alkalinityDkh)),
  calciumMgPerL: quantity(calcium(say.tank.calciumMgPerL), 430),
  magnesiumMgPerL: quantity(magnesium(say.tank.magnesiumMgPerL), 1300),
  salinityPractical: quantity(salinity(say.tank.salinityPractical), 35),
  tempC: quantity(
    { ...say.tank.tempC, unit: '°C', min: 10, max: 38, slider: [20, 30], step: 0.1 },
    25.5,
  ),
  nitrateMgPerL: quantity(
    { ...say.tank.nitrateMgPerL, unit: 'mg/L', min: 0, max: 500, slider: [0, 50], step: 0.5 },
    5,
  ),
  phosphateMgPerL: quantity(
    { ...say.tank.phosphateMgPerL, unit: 'mg/L', min: 0, max: 20, slider: [0, 1], step: 0.01 },
    0.05,
  ),
  ammoniaMgPerL: quantity(
    { ...say.tank.ammoniaMgPerL, unit: 'mg/L', min: 0, max: 20, slider: [0, 2], step: 0.01 },
    0,
  ),
});

export const start = part(say.start, {
  carbon: choice(
    say.start.carbon,
    ['settledCycle', 'airEquilibrium', 'measuredPh'],
    'settledCycle',
  ),
  phNbs: quantity(
    { ...say.start.phNbs, unit: 'pH', min: 6.5, max: 9.5, slider: [7.6, 8.6], step: 0.01 },
    8.1,
  ),
  omegaReference: quantity(
    { ...say.start.omegaReference, unit: 'Ω', min: 0, max: 6, slider: [0, 6], step: 0.01 },
    0,
  ),
  clockHour: quantity({ ...say.start.clockHour, unit: 'h', min: 0, max: 23, step: 1 }, 0),
});
