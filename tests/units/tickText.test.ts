import { scaleLinear } from 'd3-scale';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { tickText } from '../../src/charts/tickText';

it('writes the marks of an axis as d3 would', () => {
  const span = fc.tuple(
    fc.double({ min: -500, max: 1500, noNaN: true }),
    fc.double({ min: 0.01, max: 3000, noNaN: true }),
  );
  fc.assert(
    fc.property(span, fc.constantFrom(2, 3, 4, 6), ([low, wide], count) => {
      const y = scaleLinear([low, low + wide], [0, 1]);
      const ticks = y.ticks(count);
      expect(ticks.map(tickText(y, count))).toEqual(ticks.map(y.tickFormat(count, 'f')));
    }),
  );
});
