import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputText } from '../../shared/units/format';
import { parseQuantity } from '../../shared/units/parse';

const value = async (text: string, unit: string) => {
  const parsed = await parseQuantity(text, unit);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
};
const complaint = async (text: string, unit: string) => {
  const parsed = await parseQuantity(text, unit);
  return parsed.ok ? `taken as ${parsed.value}` : parsed.message;
};

/** Exact by definition: NIST SP 811, appendix B (US gallon 3.785411784 L; °C = (°F − 32) / 1.8). */
describe('a typed quantity', () => {
  it.each([
    ['8.5', 'dKH', 8.5],
    ['8,5', 'dKH', 8.5],
    ['8,5 dKH', 'dKH', 8.5],
    ['300 l', 'L', 300],
    ['10 gal', 'L', 37.85411784],
    ['80 US gal', 'L', 302.83294272],
    ['30 mL/h', 'L/day', 0.72],
    ['4 L', 'L/day', 4],
    ['1 gal', 'L/day', 3.785411784],
    ['77 °F', '°C', 25],
    ['420 ppm', 'mg/L', 420],
    ['21:30', 'h', 21.5],
    ['−3', '°C', -3],
    ['~8.4', 'dKH', 8.4],
    ['ca. 8,4 dKH', 'dKH', 8.4],
    ['9:00', 'h', 9],
    // 50.0435 mg of CaCO₃ a milliequivalent, 2.8039 dKH a meq/L: 17.848 mg/L a dKH (science basis §1).
    ['178.48 ppm', 'dKH', 10.0002],
    ['35 psu', 'ppt', 35],
  ])('reads %s as %s', async (text, unit, expected) => {
    expect(await value(text, unit)).toBeCloseTo(expected, text.includes('ppm') ? 3 : 9);
  });

  it('reads equivalents as dKH: 1 dKH is 10 mg of CaO in a litre, 0.3566 meq', async () => {
    expect(await value('1 meq/L', 'dKH')).toBeCloseTo(2.804, 3);
  });

  it('reads a specific gravity as salinity: 1.0264 at 25/25 is 35 (EOS-80, hydrometer.csv)', async () => {
    expect(await value('1.0264 sg', 'ppt')).toBeCloseTo(35, 1);
  });

  it.each([
    ['1,000', 'L', 'can be 1 or 1000'],
    ['12 kg', 'L', 'cannot be turned into L'],
    ['banana', 'L', 'is not a number in L'],
    ['', 'L', 'Nothing is typed here'],
    ['1e9', 'L', 'cannot be turned into L'],
    ['NaN', 'L', 'is not a number'],
    ['8..5', 'dKH', 'cannot be turned'],
  ])('refuses %s for %s with a reason', async (text, unit, reason) => {
    expect(await complaint(text, unit)).toContain(reason);
  });

  it('never throws and never gives a number that is not finite, whatever is typed', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string(),
        fc.constantFrom('L', 'dKH', '°C', 'L/day', ''),
        async (t, u) => {
          const parsed = await parseQuantity(t, u);
          expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.message.length > 0).toBe(true);
        },
      ),
    );
  });

  it('reads back what a field shows', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.double({ min: 0.01, max: 1e5, noNaN: true }),
        fc.constantFrom(0.01, 0.1, 1, 5),
        async (number, step) => {
          const shown = await value(inputText(number, step), 'L');
          expect(Math.abs(shown / number - 1)).toBeLessThan(5e-6);
        },
      ),
    );
  });
});
