import { expect, it } from 'vitest';
import { beforesOf } from '../../workers/studies/fit/before';
import type { Parameter } from '../../workers/studies/fit/parameters';

it('what is known beforehand is told from where the slopes were taken, at rest and not', () => {
  const free = { id: 'use' } as Parameter;
  const may = {
    ...{ id: 'growth', prior: { mean: 2, sigma: 1 }, mayRest: { at: 0.5, odds: 0.25 } },
  } as Parameter;
  const [moves, rests] = beforesOf([free, may], [1.1, 1.2]);
  expect(moves).toEqual({ mean: [0, 2 - 1.2], sigma: [5, 1], odds: 0.75 });
  expect(rests).toEqual({ mean: [0, 0.5 - 1.2], sigma: [5, 0.02], odds: 0.25 });
});
