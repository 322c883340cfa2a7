import fc from 'fast-check';
import { expect, it } from 'vitest';
import { calendarOf, momentH } from '../../shared/scenario/clock';

it('any moment has a day and an hour that can be set, within half a minute', () => {
  fc.assert(
    fc.property(fc.double({ min: -48, max: 5000, noNaN: true }), (sinceMidnightH) => {
      const { day, hour } = calendarOf(sinceMidnightH);
      expect(hour).toBeGreaterThanOrEqual(0);
      expect(hour).toBeLessThanOrEqual(23.99);
      expect(Math.abs(momentH({ day, hour }, 0) - sinceMidnightH)).toBeLessThanOrEqual(0.01);
    }),
  );
  expect(calendarOf(47.99999999999988)).toEqual({ day: 3, hour: 0 });
  expect(calendarOf(47.5)).toEqual({ day: 2, hour: 23.5 });
});
