import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spreadLabels } from '../../src/charts/endLabels';
import { fittedName, roomOf } from '../../src/charts/fittedName';
import { runsOf } from '../laws/size';

const GAP = 14;
const lines = fc.array(fc.double({ min: -50, max: 400, noNaN: true }), { maxLength: 12 });
const frames = fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 300 }));

it('names at the ends of lines never cover each other, leave the frame, or change places', () => {
  fc.assert(
    fc.property(lines, frames, (ys, [top, high]) => {
      const bottom = top + high;
      const spread = spreadLabels(
        ys.map((y, i) => ({ key: String(i), y })),
        GAP,
        top,
        bottom,
      );
      const apart = Math.min(GAP, high / Math.max(1, ys.length - 1));
      const order = [...ys.keys()].sort((a, b) => ys[a]! - ys[b]!);
      expect(spread.map(({ key }) => Number(key))).toEqual(order);
      for (const [i, { y }] of spread.entries()) {
        expect(y).toBeGreaterThanOrEqual(top - 1e-9);
        expect(y).toBeLessThanOrEqual(bottom + 1e-9);
        if (i > 0) expect(y - spread[i - 1]!.y).toBeGreaterThanOrEqual(apart - 1e-9);
      }
    }),
    runsOf(500),
  );
});

it('a name stays on its line where nothing is in its way', () => {
  const far = fc.uniqueArray(fc.integer({ min: 0, max: 10 }), { maxLength: 8 });
  fc.assert(
    fc.property(far, (places) => {
      const labels = places.map((place) => ({ key: String(place), y: 20 + place * (GAP + 2) }));
      for (const { key, y } of spreadLabels(labels, GAP, 10, 250))
        expect(y).toBe(20 + Number(key) * (GAP + 2));
    }),
    runsOf(100),
  );
});

it('a name is whole where it has room, and else cut so that it has', () => {
  const name = fc.string({ minLength: 1, maxLength: 60, unit: 'grapheme' });
  fc.assert(
    fc.property(name, fc.integer({ min: 20, max: 200 }), (text, room) => {
      const fitted = fittedName(text, 12, room);
      expect(roomOf(fitted, 12)).toBeLessThanOrEqual(room);
      if (roomOf(text, 12) <= room) expect(fitted).toBe(text);
      else expect(fitted).toMatch(/…$/);
    }),
    runsOf(300),
  );
  expect(fittedName("Today's plan", 12, 80)).toBe("Today's plan");
  expect(fittedName('= Trial A', 12, 80)).toBe('= Trial A');
});
