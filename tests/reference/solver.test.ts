import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CarbonateSolver } from '../../shared/seawater';

const water = fc.record({
  alkalinity: fc.double({ min: -0.002, max: 0.02, noNaN: true }),
  dic: fc.double({ min: 0, max: 0.02, noNaN: true }),
});

describe('the solver', () => {
  it('finds the same pH wherever it starts from', () => {
    const warm = new CarbonateSolver();
    fc.assert(
      fc.property(water, ({ alkalinity, dic }) => {
        const cold = new CarbonateSolver();
        cold.solve(alkalinity, dic);
        warm.solve(alkalinity, dic);
        expect(Math.abs(warm.phTotal - cold.phTotal)).toBeLessThan(1e-11);
      }),
      { numRuns: 2000 },
    );
  });

  it('falls in pH as DIC rises, and rises in pH with alkalinity', () => {
    const solver = new CarbonateSolver();
    const phAt = (alkalinity: number, dic: number) => {
      solver.solve(alkalinity, dic);
      return solver.phTotal;
    };
    fc.assert(
      fc.property(water, ({ alkalinity, dic }) => {
        const ph = phAt(alkalinity, dic);
        expect(phAt(alkalinity, dic + 1e-4)).toBeLessThan(ph);
        expect(phAt(alkalinity + 1e-4, dic)).toBeGreaterThan(ph);
      }),
    );
  });

  it('takes new conditions after having skipped the same ones', () => {
    const solver = new CarbonateSolver();
    const phAt = (tempC: number) => {
      solver.setConditions(tempC, 35);
      solver.solve(0.0023, 0.002);
      return solver.phTotal;
    };
    const [first, again, warmer, back] = [phAt(25), phAt(25), phAt(26), phAt(25)];
    expect(again).toBeCloseTo(first ?? NaN, 12);
    expect(warmer).toBeLessThan((first ?? NaN) - 0.005);
    expect(back).toBeCloseTo(first ?? NaN, 12);
  });

  it('throws on amounts that are not finite or negative, and solves on afterwards', () => {
    const solver = new CarbonateSolver();
    expect(() => solver.solve(NaN, 0.002)).toThrow(RangeError);
    expect(() => solver.solve(0.0023, -1e-9)).toThrow(/DIC -1e-9 mol\/kg has no pH; expected/);
    solver.solve(0.0023, 0.002);
    expect(solver.phTotal).toBeCloseTo(8.046, 3);
  });
});
