import { expect, it } from 'vitest';
import { counted } from '../../src/charts/counted';
import { shrunk } from '../../src/charts/shrunk';

it('marks that stand close are smaller, and never none', () => {
  expect(shrunk(30, 600)).toBe(1);
  expect(shrunk(120, 600)).toBeCloseTo(0.5, 9);
  expect(shrunk(2000, 600)).toBe(0.4);
  expect(shrunk(0, 600)).toBe(1);
});

it('what happened often is read aloud once', () => {
  expect(counted(['3 g', '10 %', '3 g'])).toEqual(['3 g × 2', '10 %']);
});
