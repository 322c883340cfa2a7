import { expect, it } from 'vitest';
import { LitPath } from '../../workers/engine/litPath';

/** The mean by a hundred thousand slices: growth answers to no more than Ω 6. */
function slicedMean(weightAt: (t: number) => number, omegaAt: (t: number) => number): number {
  let [sum, all] = [0, 0];
  for (let i = 0; i < 100_000; i++) {
    const t = (i + 0.5) / 100_000;
    sum += weightAt(t) * Math.min(6, omegaAt(t));
    all += weightAt(t);
  }
  return sum / all;
}

it.each([
  ['from 5 to 8.3 as the light comes', 1, 3, 5, 8.3],
  ['from 8.6 to 4 as it goes', 2, 0.5, 8.6, 4],
  ['below the bend', 1, 3, 3, 5],
])('a day whose saturation goes %s has the mean that slices of it have', (_, w0, w1, o0, o1) => {
  const at = (t: number) => ({ weight: w0 + t * (w1 - w0), omega: o0 + t * (o1 - o0) });
  const path = new LitPath();
  path.add(1, at(0), at(0.5), at(1));
  const sliced = slicedMean(
    (t) => at(t).weight,
    (t) => at(t).omega,
  );
  expect(path.meanOmega).toBeCloseTo(sliced, 6);
  expect(path.lowestOmega).toBe(Math.min(o0, o1));
});
