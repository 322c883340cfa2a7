import { say } from '../words/surroundings';
import * as v from 'valibot';
import { choice, expression, part, quantity } from './quantity';

const co2 = {
  unit: 'ppm',
  min: 0,
  max: 20000,
  slider: [400, 2500] as const,
  step: 10,
};

export const room = part(say.room, {
  co2Ppm: quantity(
    {
      ...co2,
      ...say.room.co2Ppm,
    },
    700,
  ),
  co2Factor: expression(say.room.co2Factor),
  co2PpmByHour: v.optional(
    v.pipe(
      v.array(v.pipe(v.number(), v.finite(), v.minValue(co2.min), v.maxValue(co2.max))),
      v.check((hours) => hours.length === 0 || hours.length === 24, 'needs 24 numbers, or none'),
      v.title(say.room.co2PpmByHour.title),
      v.description(say.room.co2PpmByHour.help),
    ),
    [],
  ),
});

export const aerations = ['still', 'rippled', 'skimmer', 'skimmerOutsideAir'] as const;

export const gas = part(say.gas, {
  kLaPerH: quantity(
    { ...say.gas.kLaPerH, unit: '1/h', min: 0, max: 20, slider: [0, 5], step: 0.01 },
    1.2,
  ),
  enhancement: choice(say.gas.enhancement, ['on', 'off'], 'on'),
  aeration: choice(say.gas.aeration, aerations, 'skimmer'),
  outsideAirPercent: quantity(
    { ...say.gas.outsideAirPercent, unit: '%', min: 0, max: 100, step: 5 },
    50,
  ),
  lightsOnPhNbs: quantity(
    { ...say.gas.lightsOnPhNbs, unit: 'pH', min: 7, max: 9, slider: [7.6, 8.6], step: 0.01 },
    8.0,
  ),
  lightsOffPhNbs: quantity(
    { ...say.gas.lightsOffPhNbs, unit: 'pH', min: 7, max: 9, slider: [7.6, 8.6], step: 0.01 },
    8.25,
  ),
});

export const lights = part(say.lights, {
  onHour: quantity(
    { ...say.lights.onHour, unit: 'h', min: 0, max: 23.5, slider: [0, 23], step: 0.5 },
    9,
  ),
  hours: quantity({ ...say.lights.hours, unit: 'h', min: 0, max: 24, step: 0.5 }, 10),
  rampHours: quantity(
    { ...say.lights.rampHours, unit: 'h', min: 0, max: 6, slider: [0, 3], step: 0.25 },
    0,
  ),
});

export const evaporation = part(say.evaporation, {
  mode: choice(say.evaporation.mode, ['fixed', 'byAir'], 'fixed'),
  surfaceM2: quantity(
    { ...say.evaporation.surfaceM2, unit: 'm²', min: 0.01, max: 500, slider: [0.1, 4], step: 0.05 },
    0.5,
  ),
  airTempC: quantity(
    { ...say.evaporation.airTempC, unit: '°C', min: 0, max: 45, slider: [15, 35], step: 0.5 },
    22,
  ),
  humidityPercent: quantity(
    { ...say.evaporation.humidityPercent, unit: '%', min: 0, max: 100, slider: [20, 90], step: 1 },
    50,
  ),
  factor: expression(say.evaporation.factor),
  litresPerDay: quantity(
    {
      ...say.evaporation.litresPerDay,
      unit: 'L/day',
      min: 0,
      max: 1000,
      slider: [0, 20],
      step: 0.1,
    },
    3,
  ),
});

export const temperaturePlan = v.optional(
  v.pipe(
    v.array(
      part(say.temperaturePlan.point, {
        day: quantity(
          { ...say.temperaturePlan.point.day, unit: 'day', min: 0, max: 1830, step: 1 },
          0,
        ),
        tempC: quantity(
          { ...say.temperaturePlan.point.tempC, unit: '°C', min: 10, max: 38, step: 0.1 },
          25,
        ),
      }),
    ),
    v.maxLength(200),
    v.title(say.temperaturePlan.title),
    v.description(say.temperaturePlan.help),
  ),
  [],
);
