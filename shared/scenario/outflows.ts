import { say } from '../words/outflows';
import { part, quantity } from './quantity';

export const outflows = part(say.outflows, {
  skimmingLPerDay: quantity(
    {
      ...say.outflows.skimmingLPerDay,
      unit: 'L/day',
      min: 0,
      max: 500,
      slider: [0, 10],
      step: 0.1,
    },
    0,
  ),
  leakLPerDay: quantity(
    { ...say.outflows.leakLPerDay, unit: 'L/day', min: 0, max: 5000, slider: [0, 20], step: 0.1 },
    0,
  ),
  spareL: quantity(
    { ...say.outflows.spareL, unit: 'L', min: 0.5, max: 5000, slider: [1, 100], step: 1 },
    30,
  ),
});

export const calciumReactor = part(say.calciumReactor, {
  dripLPerH: quantity(
    { ...say.calciumReactor.dripLPerH, unit: 'L/h', min: 0, max: 500, slider: [0, 10], step: 0.05 },
    0,
  ),
  effluentDkh: quantity(
    {
      ...say.calciumReactor.effluentDkh,
      unit: 'dKH',
      min: 5,
      max: 80,
      slider: [10, 50],
      step: 0.5,
    },
    25,
  ),
  effluentPhNbs: quantity(
    {
      ...say.calciumReactor.effluentPhNbs,
      unit: 'pH',
      min: 5.5,
      max: 8,
      slider: [6, 7.5],
      step: 0.05,
    },
    6.6,
  ),
});
