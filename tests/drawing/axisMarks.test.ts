import fc from 'fast-check';
import { expect, it } from 'vitest';
import { timeMarks } from '../../src/charts/axisMarks';

/** "12:00" at 12 px, with a gap. */
const LABEL_PX = 44;
/** Of a chart's width its scale and its lines' names take so much at the least. */
const BESIDE_PX = 110;

it('hours along an axis do not touch, however narrow the chart is', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 240, max: 1400 }),
      fc.integer({ min: 0, max: 90 * 24 }),
      fc.integer({ min: 6, max: 84 }),
      fc.integer({ min: 0, max: 23 }),
      (width, fromH, hours, clockHour) => {
        const marks = timeMarks({ fromH, toH: fromH + hours }, width, clockHour);
        const pxPerH = (width - BESIDE_PX) / hours;
        for (const [i, { at }] of marks.slice(1).entries()) {
          expect((at - marks[i]!.at) * pxPerH).toBeGreaterThanOrEqual(
            Math.min(LABEL_PX, 24 * pxPerH),
          );
        }
        expect(marks.length).toBeGreaterThanOrEqual(Math.floor(hours / 24));
      },
    ),
  );
});
