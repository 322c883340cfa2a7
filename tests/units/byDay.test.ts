import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fanShape, type FanPicture } from '../../src/charts/fanShape';
import { hourByHour } from '../../src/charts/hourByHour';
import { cardCurve } from '../../src/card/cardCurve';
import { runsOf } from '../laws/size';

const frame = { width: 640, height: 240, left: 40, right: 12, top: 10, bottom: 26 };

/** The heights of a path's points, in the order in which it is drawn. */
const heights = (path: string) =>
  [...path.matchAll(/[ML][^,]+,([^MLZ]+)/g)].map(([, y]) => Number(y));
const turns = (path: string) => {
  const ys = heights(path);
  return ys.filter(
    (y, i) => i > 1 && Math.sign(y - ys[i - 1]!) * Math.sign(ys[i - 1]! - ys[i - 2]!) < 0,
  ).length;
};

/** A tank that swings by day, known at every hour or only at some. */
const swinging = (days: number, everyH: number, swing: number): FanPicture => {
  const timesH = Array.from({ length: Math.floor((days * 24) / everyH) + 1 }, (_, i) => i * everyH);
  return {
    timesH,
    dkh: timesH.map((h) => 8 - h / 500 + swing * Math.sin((h * Math.PI) / 12)),
    spreadDkh: timesH.map(() => 0.1),
    ...{ points: [], band: [7, 11], fromH: 0, toH: days * 24 },
  };
};

it('over a week or more a forecast has no tooth a day, and its wash holds the ribbon, which holds the mean', () => {
  const tank = fc.tuple(
    fc.integer({ min: 7, max: 44 }),
    fc.constantFrom(1, 3, 6),
    fc.double({ min: 0.05, max: 1, noNaN: true }),
  );
  fc.assert(
    fc.property(tank, ([days, everyH, swing]) => {
      const shape = fanShape(swinging(days, everyH, swing), frame);
      expect(turns(shape.middle)).toBeLessThan(days / 2);
      const ends = (path: string) =>
        [Math.min(...heights(path)), Math.max(...heights(path))] as const;
      const [wash, ribbon, mean] = [ends(shape.wash), ends(shape.swing), ends(shape.middle)];
      expect(wash[0]).toBeLessThanOrEqual(ribbon[0] + 0.01);
      expect(ribbon[0]).toBeLessThanOrEqual(mean[0] + 0.01);
      expect(mean[1]).toBeLessThanOrEqual(ribbon[1] + 0.01);
      expect(ribbon[1]).toBeLessThanOrEqual(wash[1] + 0.01);
      // So wide as the day swings, however far apart the course is known.
      const px = (dkh: number) => Math.abs(shape.y(0) - shape.y(dkh));
      expect(ribbon[1] - ribbon[0]).toBeLessThan(px(2 * swing + (days * 24) / 500 + 0.01));
    }),
    runsOf(100),
  );
  const short = fanShape(swinging(4, 1, 0.4), frame);
  expect(turns(short.middle)).toBeGreaterThanOrEqual(7);
  expect(short.swing).toBe('');
});

it('days before the course begins have none of it', () => {
  const point = { timeH: -300, value: 8.2, sigma: 0, outlier: false };
  const before = { ...swinging(20, 1, 0.4), points: [point], fromH: -500, toH: -100 };
  const { middle, swing, wash, x, y } = fanShape(before, frame);
  expect([middle, swing, wash]).toEqual(['', '', '']);
  expect(x(-300)).toBeGreaterThan(frame.left);
  expect(y(8.2)).toBeGreaterThan(frame.top);
});

it('the curve of a card is the mean of its days', () => {
  const hours = Float64Array.from(
    { length: 28 * 24 + 1 },
    (_, h) => 8.5 + 0.4 * Math.sin((h * Math.PI) / 12),
  );
  const curve = cardCurve(hours, 8.5, 7, 11);
  expect(Math.max(...heights(curve.path)) - Math.min(...heights(curve.path))).toBeLessThan(0.5);
  const swing = heights(curve.swing);
  expect(Math.max(...swing) - Math.min(...swing)).toBeCloseTo(curve.y(8.1) - curve.y(8.9), 0);
});

it('a course is read between the times at which it is known, and is itself where it is known', () => {
  const times = fc.uniqueArray(fc.integer({ min: 0, max: 300 }), { minLength: 2, maxLength: 30 });
  fc.assert(
    fc.property(times, (unsorted) => {
      const timesH = unsorted.toSorted((a, b) => a - b);
      const { fromH, values } = hourByHour(
        timesH,
        timesH.map((h) => 3 * h + 1),
      );
      expect(fromH).toBe(timesH[0]);
      expect(values).toHaveLength(timesH.at(-1)! - fromH + 1);
      values.forEach((value, i) => expect(value).toBeCloseTo(3 * (fromH + i) + 1, 9));
    }),
    runsOf(100),
  );
});
