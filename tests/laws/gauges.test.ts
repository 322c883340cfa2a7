import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Line } from '../../shared/verdict/lines';
import { Gauge, type WatchedLine } from '../../workers/engine/gauge';
import { SlidingExtreme } from '../../workers/engine/slidingExtreme';
import { runsOf } from './size';

/** Few values, so that many stand exactly on a limit, or twice at the same. */
const anyValue = fc.integer({ min: -4, max: 4 });
const anyLine = fc.record({
  trouble: fc.constantFrom('above' as const, 'below' as const),
  limit: anyValue,
});

/** Every line compared at every value, and the worst of all so far. */
function byPlainComparison(lines: readonly Pick<Line, 'trouble' | 'limit'>[], values: number[]) {
  return lines.map(({ trouble, limit }) => {
    const sign = trouble === 'above' ? 1 : -1;
    const out = values.map((value) => sign * value > sign * limit);
    return {
      passed: out.map((isOut, i) => isOut !== (out[i - 1] ?? false)),
      worst: sign * Math.max(...values.map((value) => sign * value)),
    };
  });
}

it('a gauge tells of every line that is passed and keeps its worst, as plain comparison does', () => {
  fc.assert(
    fc.property(
      fc.array(anyLine, { minLength: 1, maxLength: 5 }),
      fc.array(anyValue, { minLength: 1, maxLength: 30 }),
      (lines, values) => {
        const gauge = new Gauge(0);
        for (const line of lines) {
          const rest = { id: '', quantity: 'ph', isOut: false, worst: NaN, worstH: NaN } as const;
          gauge.lines.push({ ...line, ...rest, gauge } as WatchedLine);
        }
        const passed = lines.map((): boolean[] => []);
        values.forEach((value, hour) => {
          const stirred = gauge.look(Float64Array.of(value));
          gauge.lines.forEach((line, i) => passed[i]!.push(stirred && gauge.passes(line)));
          if (!stirred) return;
          gauge.noteWorst(hour);
          gauge.settle();
        });
        const plain = byPlainComparison(lines, values);
        expect(passed).toEqual(plain.map((line) => line.passed));
        expect(gauge.lines.map(({ worst }) => worst + 0)).toEqual(
          plain.map((line) => line.worst + 0),
        );
      },
    ),
    runsOf(20_000),
  );
});

it('a sliding extreme is that of the window, as looking through all of it is', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(1 as const, -1 as const),
      fc.array(fc.tuple(fc.integer({ min: 0, max: 3 }), anyValue), { minLength: 1, maxLength: 30 }),
      fc.integer({ min: 0, max: 6 }),
      (sign, steps, windowH) => {
        const extreme = new SlidingExtreme(sign);
        const noted: [timeH: number, value: number][] = [];
        let timeH = 0;
        for (const [hours, value] of steps) {
          timeH += hours;
          noted.push([timeH, value]);
          extreme.note(timeH, value, timeH - windowH);
          const within = noted.filter(([at]) => at >= timeH - windowH).map(([, seen]) => seen);
          const most = sign * Math.max(...within.map((seen) => sign * seen));
          expect(extreme.since(timeH - windowH, NaN) + 0).toBe(most + 0);
        }
      },
    ),
    runsOf(20_000),
  );
});
