import { describe, expect, it } from 'vitest';
import { thinned } from '../../shared/recipe/thinned';
import { scenarioOf } from '../../shared/scenario/write';
import { signed } from '../../src/say/texts';
import { figure } from '../../shared/words/figure';

describe('a figure in a sentence', () => {
  it('has no digits that only binary arithmetic left there', () => {
    expect(figure(3.43 * 10)).toBe('34.3');
    expect(figure(0.1 + 0.2)).toBe('0.3');
    expect(figure(1234.5)).toBe('1234.5');
    expect(figure(20000)).toBe('20000');
    expect(figure(Infinity)).toBe('Infinity');
  });

  it('has no sign where it rounds to nothing', () => {
    expect([-0.04, 0.04, -0.06, 0.06].map((value) => signed(value, 1))).toEqual([
      '0.0',
      '0.0',
      '−0.1',
      '+0.1',
    ]);
    expect([figure(-0.0004, 2), figure(-0.4, 0), figure(-0.6, 0)]).toEqual(['0.00', '0', '-1']);
  });

  it('of a thinned stock’s dose is three at the most, in the plan itself', () => {
    const recipe = [{ additive: 'sodiumCarbonate', gramsPerL: 60 }];
    for (let hundredths = 1; hundredths < 500; hundredths += 1) {
      const { dosers } = scenarioOf({
        dosers: [{ name: 'soda', recipe, mlPerDay: hundredths / 100 }],
      });
      const { mlPerDay } = thinned(dosers)[0]!;
      expect(String(mlPerDay).replace('.', '').length).toBeLessThanOrEqual(3);
      expect(mlPerDay).toBeCloseTo(hundredths / 10, 9);
    }
  });
});
