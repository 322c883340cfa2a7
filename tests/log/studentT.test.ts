import { expect, it } from 'vitest';
import { FREEDOM, NARROWER, priceOf, weightOf } from '../../workers/studies/fit/studentT';

/** Density of an error of so many σ, but for a constant. */
const density = (z: number) => (1 + (NARROWER * z * z) / FREEDOM) ** (-(FREEDOM + 1) / 2);

/** The mean of something over errors that are drawn from it: a midpoint sum out to 400 σ. */
function mean(of: (z: number) => number): number {
  let [sum, all] = [0, 0];
  for (let z = 0.005; z < 400; z += 0.01) {
    all += density(z);
    sum += density(z) * of(z);
  }
  return sum / all;
}

it('a weight is what the error’s own density says, and informs as much as a normal', () => {
  // The score z·weight has the mean product 1 with z, and its square is the Fisher information.
  expect(mean((z) => weightOf(z * z) * z * z)).toBeCloseTo(1, 4);
  expect(mean((z) => (weightOf(z * z) * z) ** 2)).toBeCloseTo(1, 4);
});

it.each([0, 0.5, 1, 3, 6])('no other weight of a reading %d σ off is cheaper', (z) => {
  const evidence = (weight: number) => (Math.log(weight) - weight * z * z) / 2 + priceOf([weight]);
  const own = weightOf(z * z);
  for (const times of [0.5, 0.9, 0.99, 1.01, 1.1, 2]) {
    expect(evidence(own * times)).toBeLessThan(evidence(own));
  }
});
