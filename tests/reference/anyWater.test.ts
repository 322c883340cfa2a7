import fc from 'fast-check';
import { expect, it } from 'vitest';
import { carbonateFromAlkalinityDic } from '../../shared/seawater';

const water = fc.record({
  alkalinityUmolPerKg: fc.double({ min: -2e5, max: 2e5, noNaN: true }),
  dicUmolPerKg: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 2e5, noNaN: true })),
  tempC: fc.double({ min: 0, max: 40, noNaN: true }),
  salinityPractical: fc.double({ min: 5, max: 45, noNaN: true }),
  phosphateUmolPerKg: fc.double({ min: 0, max: 1000, noNaN: true }),
  ammoniaUmolPerKg: fc.double({ min: 0, max: 1000, noNaN: true }),
});

it('any water, however far from the sea, is solved to its own alkalinity and DIC', () => {
  fc.assert(
    fc.property(water, (one) => {
      const solved = carbonateFromAlkalinityDic(one);
      const size = Math.abs(one.alkalinityUmolPerKg) + one.dicUmolPerKg + 1;
      expect(Math.abs(solved.alkalinityUmolPerKg - one.alkalinityUmolPerKg) / size).toBeLessThan(
        1e-9,
      );
      expect(Math.abs(solved.dicUmolPerKg - one.dicUmolPerKg) / size).toBeLessThan(1e-12);
    }),
    { numRuns: 2000 },
  );
});
