import * as v from 'valibot';
import { choice, expression, part, quantity } from './quantity';

const seasonal = 'A factor in time, such as 1 + 0.2 * cos(2 * pi * day / 365).';

const co2 = {
  title: 'Room CO₂',
  unit: 'ppm',
  min: 0,
  max: 20000,
  slider: [400, 2500] as const,
  step: 10,
};

export const room = part('Room air', 'The air that the water breathes.', {
  co2Ppm: quantity(
    {
      ...co2,
      help: 'Windows open about 450, normal 700, shut 1200 (common practice).',
      measure: 'A CO₂ meter at the height of the tank, morning and evening.',
    },
    700,
  ),
  co2Factor: expression('Room CO₂ through the seasons', seasonal),
  co2PpmByHour: v.optional(
    v.pipe(
      v.array(v.pipe(v.number(), v.finite(), v.minValue(co2.min), v.maxValue(co2.max))),
      v.check((hours) => hours.length === 0 || hours.length === 24, 'needs 24 numbers, or none'),
      v.title('Room CO₂ by hour of day'),
      v.description('24 numbers from midnight; empty means the same all day.'),
    ),
    [],
  ),
});

export const aerations = ['still', 'rippled', 'skimmer', 'skimmerOutsideAir'] as const;

export const gas = part('Gas exchange', 'How fast CO₂ finds its balance with the room.', {
  kLaPerH: quantity(
    {
      title: 'kLa of CO₂',
      unit: '1/h',
      min: 0,
      max: 20,
      slider: [0, 5],
      step: 0.01,
      help: 'Nobody knows theirs: solve it from pH by day and night, below.',
    },
    1.2,
  ),
  enhancement: choice(
    'Chemical enhancement',
    ['on', 'off'],
    'on',
    'CO₂ that reacts inside the surface film crosses faster; it matters over still water.',
  ),
  aeration: choice(
    'Aeration',
    aerations,
    'skimmer',
    'A plain word for it: still surface; rippled; overflow and skimmer; skimmer drawing outside air.',
  ),
  lightsOnPhNbs: quantity(
    {
      title: 'pH just before lights-on',
      unit: 'pH',
      min: 7,
      max: 9,
      slider: [7.6, 8.6],
      step: 0.01,
    },
    8.0,
  ),
  lightsOffPhNbs: quantity(
    {
      title: 'pH just before lights-off',
      unit: 'pH',
      min: 7,
      max: 9,
      slider: [7.6, 8.6],
      step: 0.01,
    },
    8.25,
  ),
});

export const lights = part('Lights', 'On and off at the same hours each day.', {
  onHour: quantity(
    { title: 'Lights on at', unit: 'h', min: 0, max: 23.5, slider: [0, 23], step: 0.5 },
    9,
  ),
  hours: quantity({ title: 'Hours of light', unit: 'h', min: 0, max: 24, step: 0.5 }, 10),
  rampHours: quantity(
    {
      title: 'Dawn and dusk, each',
      unit: 'h',
      min: 0,
      max: 6,
      slider: [0, 3],
      step: 0.25,
      help: 'Inside the hours of light; the light of the day stays the same in sum.',
    },
    0,
  ),
});

export const evaporation = part('Evaporation', 'Fresh water that leaves; the salt stays.', {
  mode: choice(
    'Known',
    ['fixed', 'byAir'],
    'fixed',
    'fixed: litres a day as you measured; byAir: from surface, temperatures and humidity (Shah 2014).',
  ),
  surfaceM2: quantity(
    { title: 'Water surface', unit: 'm²', min: 0.01, max: 500, slider: [0.1, 4], step: 0.05 },
    0.5,
  ),
  airTempC: quantity(
    { title: 'Room temperature', unit: '°C', min: 0, max: 45, slider: [15, 35], step: 0.5 },
    22,
  ),
  humidityPercent: quantity(
    { title: 'Relative humidity', unit: '%', min: 0, max: 100, slider: [20, 90], step: 1 },
    50,
  ),
  factor: expression('Evaporation through the seasons', seasonal),
  litresPerDay: quantity(
    {
      title: 'Evaporation',
      unit: 'L/day',
      min: 0,
      max: 1000,
      slider: [0, 20],
      step: 0.1,
      measure: 'Mark the top-off reservoir, read the drop after three days, divide by three.',
    },
    3,
  ),
});

export const temperaturePlan = v.optional(
  v.pipe(
    v.array(
      part('Point', '', {
        day: quantity({ title: 'Day', unit: 'day', min: 0, max: 1830, step: 1 }, 0),
        tempC: quantity({ title: 'Temperature', unit: '°C', min: 10, max: 38, step: 0.1 }, 25),
      }),
    ),
    v.maxLength(200),
    v.title('Temperature plan'),
    v.description(
      'Points joined by straight lines, from the start temperature on; empty: constant.',
    ),
  ),
  [],
);
