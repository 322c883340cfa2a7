import fc from 'fast-check';
import { expect, it } from 'vitest';
import { axisLabels } from '../../src/charts/axisLabels';
import { dateMarks } from '../../src/charts/axisMarks';

/** As the charts set them: eleven pixels of type. */
const LETTER_PX = 6.2;
const LEFT_PX = 40;

it('dates along an axis touch no other date and are cut by no edge, at any width and span', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 260, max: 1300 }),
      fc.integer({ min: 2, max: 400 }),
      fc.integer({ min: 0, max: 400 * 24 }),
      (widthPx, days, startH) => {
        const span = { fromH: 0, toH: days * 24 };
        const place = (at: number) =>
          LEFT_PX + ((widthPx - LEFT_PX - 12) * (at - span.fromH)) / (span.toH - span.fromH);
        const shown = axisLabels(dateMarks(span, widthPx, 490_896 + startH), widthPx, place).filter(
          ({ isShown }) => isShown,
        );
        expect(shown.length).toBeGreaterThan(0);
        const edges = shown.map(({ x, anchor, label }) => {
          const long = LETTER_PX * label.length;
          return anchor === 'end' ? [x - long, x] : [x - long / 2, x + long / 2];
        });
        edges.forEach(([left, right], i) => {
          expect(right).toBeLessThanOrEqual(widthPx);
          if (i > 0) expect(left).toBeGreaterThan(edges[i - 1]![1]!);
        });
      },
    ),
  );
});
