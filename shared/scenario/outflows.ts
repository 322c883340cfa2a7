import { part, quantity } from './quantity';

export const outflows = part('Losses', 'Water that leaves with its salt.', {
  skimmingLPerDay: quantity(
    { title: 'Wet skimming', unit: 'L/day', min: 0, max: 500, slider: [0, 10], step: 0.1 },
    0,
  ),
  leakLPerDay: quantity(
    { title: 'Leak', unit: 'L/day', min: 0, max: 5000, slider: [0, 20], step: 0.1 },
    0,
  ),
  spareL: quantity(
    {
      title: 'Room in the sump before it overflows',
      unit: 'L',
      min: 0.5,
      max: 5000,
      slider: [1, 100],
      step: 1,
      help: 'Above the normal level. What is more runs onto the floor.',
    },
    30,
  ),
});

export const mediaReactor = part(
  'Media reactor',
  'Carbon dioxide dissolves coral gravel; its effluent drips into the tank.',
  {
    dripLPerH: quantity(
      {
        title: 'Drip of effluent',
        unit: 'L/h',
        min: 0,
        max: 500,
        slider: [0, 10],
        step: 0.05,
        help: '0 means there is none.',
        measure: 'Millilitres in a minute, times 0.06.',
      },
      0,
    ),
    effluentDkh: quantity(
      { title: 'Effluent alkalinity', unit: 'dKH', min: 5, max: 80, slider: [10, 50], step: 0.5 },
      25,
    ),
    effluentPhNbs: quantity(
      { title: 'Effluent pH', unit: 'pH', min: 5.5, max: 8, slider: [6, 7.5], step: 0.05 },
      6.6,
    ),
  },
);
