import fc from 'fast-check';
import { expect, it } from 'vitest';
import { brushed, zoomed } from '../../src/charts/zoomed';
import { runsOf } from '../laws/size';

const LEAST_H = 6;
const looks = fc
  .record({
    totalH: fc.integer({ min: 24, max: 43_920 }),
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    to: fc.double({ min: 0, max: 1, noNaN: true }),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ totalH, from, to, at }) => {
    const window = brushed(from * totalH, to * totalH, totalH);
    return { totalH, window, atH: window.fromH + at * (window.toH - window.fromH) };
  });

it('however near it is looked at, a chart shows a stretch of its trial, and no less than six hours', () => {
  fc.assert(
    fc.property(looks, fc.double({ min: 0.001, max: 1000 }), ({ totalH, window, atH }, factor) => {
      for (const { fromH, toH } of [window, zoomed(window, atH, factor, totalH)]) {
        expect(fromH).toBeGreaterThanOrEqual(0);
        expect(toH).toBeLessThanOrEqual(totalH + 1e-6);
        expect(toH - fromH).toBeGreaterThanOrEqual(LEAST_H - 1e-6);
      }
    }),
    runsOf(300),
  );
});

it('what lies under the hand stays under it, as long as neither end of the trial is reached', () => {
  fc.assert(
    fc.property(
      looks,
      fc.double({ min: 0.5, max: 2, noNaN: true }),
      ({ totalH, window, atH }, factor) => {
        const next = zoomed(window, atH, factor, totalH);
        fc.pre(next.fromH > 0 && next.toH < totalH);
        const share = (stretch: typeof next) =>
          (atH - stretch.fromH) / (stretch.toH - stretch.fromH);
        expect(share(next)).toBeCloseTo(share(window), 6);
      },
    ),
    runsOf(300),
  );
  expect(zoomed({ fromH: 100, toH: 200 }, 150, Infinity, 1440)).toEqual({ fromH: 0, toH: 1440 });
});
