import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dayMean } from '../../src/charts/dayMean';
import { dayRange } from '../../src/charts/dayRange';
import { runsOf } from '../laws/size';

const hours = fc
  .array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 1, maxLength: 120 })
  .map((values) => Float64Array.from(values));

it('the ribbon of a day holds its mean, and the hour itself; a day that swings is as wide as it swings', () => {
  fc.assert(
    fc.property(hours, (values) => {
      const mean = dayMean(values);
      values.forEach((value, i) => {
        const [low, high] = dayRange(values, i);
        expect(low).toBeLessThanOrEqual(mean[i]! + 1e-9);
        expect(high).toBeGreaterThanOrEqual(mean[i]! - 1e-9);
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
      });
    }),
    runsOf(500),
  );
  const swing = Float64Array.from({ length: 96 }, (_, i) => Math.cos((i * Math.PI) / 12));
  for (const i of [0, 30, 95]) {
    const [low, high] = dayRange(swing, i);
    expect(low).toBeCloseTo(-1, 9);
    expect(high).toBeCloseTo(1, 9);
  }
});
