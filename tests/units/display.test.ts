import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conversionOf, usualDisplay, type DisplayUnits } from '../../shared/units/display';
import { inputText, numberText, quantityText } from '../../shared/units/format';

const others: DisplayUnits = {
  alkalinity: 'meq/L',
  volume: 'US gal',
  temperature: '°F',
  salinity: 'SG',
  decimal: 'comma',
};

describe('a quantity in the units of the reader', () => {
  // dKH: 1 dKH = 0.35665 meq/L = 17.848 mg/L CaCO3 (from atomic masses, Wieser 2006). US gallon:
  // 231 in³ = 3.785411784 L (NIST Handbook 44, appendix C). SG 25/25 at S 35: 1.02637
  // (EOS-80, tables/hydrometer.csv).
  it.each([
    ['dKH', { alkalinity: 'meq/L' }, 8, 2, '2.853 meq/L'],
    ['dKH', { alkalinity: 'mg/L CaCO₃' }, 8, 1, '143 mg/L CaCO₃'],
    ['dKH/day', { alkalinity: 'meq/L' }, 1, 2, '0.357 meq/L/day'],
    ['L', { volume: 'US gal' }, 378.5411784, 0, '100.0 US gal'],
    ['L/day', { volume: 'US gal' }, 3.785411784, 1, '1.00 US gal/day'],
    ['°C', { temperature: '°F' }, 25, 1, '77.0 °F'],
    ['ppt', { salinity: 'SG' }, 35, 1, '1.0264 SG'],
    ['mg/L', others, 430, 0, '430 mg/L'],
  ] as const)('%s as %o', (unit, change, value, digits, text) => {
    const display = { ...usualDisplay, ...change, decimal: 'point' as const };
    expect(quantityText(value, digits, unit, display)).toBe(text);
  });

  it('comes back as it went out', () => {
    const units = ['dKH', 'dKH/day', 'L', 'L/day', 'L/h', '°C', 'ppt', 'mg/L'];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.double({ min: 5, max: 45, noNaN: true }),
        (u, x) => {
          const { out, back } = conversionOf(u, others);
          expect(back(out(x))).toBeCloseTo(x, 6);
        },
      ),
    );
  });

  it('is unchanged for who has chosen nothing', () => {
    expect(numberText(8.25, 2, 'dKH', usualDisplay)).toBe('8.25');
    expect(inputText(302.833, 5, 'L', usualDisplay)).toBe('302.833');
  });

  it('takes a decimal comma', () => {
    expect(inputText(8.5, 0.1, 'dKH', { ...usualDisplay, decimal: 'comma' })).toBe('8,5');
  });
});
