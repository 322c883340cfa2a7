import { expect, it } from 'vitest';
import { patience } from './size';
import { yearClosures } from './year';

it(
  'keeps its books for a year: alkalinity to 1e-3 µmol/kg, and each element to 1e-12',
  () => {
    const { alkalinityUmolPerKg, elements } = yearClosures();
    expect(alkalinityUmolPerKg).toBeLessThan(1e-3);
    expect(Object.keys(elements)).toHaveLength(12);
    for (const off of Object.values(elements)) expect(off).toBeLessThan(1e-12);
  },
  patience,
);
