import fc from 'fast-check';
import { expect, it } from 'vitest';
import { giveOrTake } from '../../shared/words/figure';

it('no use is said to be known to nothing', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5, noNaN: true }), (by) => {
      expect(Number(giveOrTake(by))).toBeGreaterThanOrEqual(0.01);
      expect(Math.abs(Number(giveOrTake(by)) - by)).toBeLessThanOrEqual(0.01);
    }),
  );
});
