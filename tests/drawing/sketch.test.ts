import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Sketch } from '../../src/lessons/sketch.svelte';
import { runsOf } from '../laws/size';

describe('a line drawn by hand', () => {
  it('begins where the tank does, joins what was left out, and ends where it was let go', () => {
    const sketch = new Sketch(8);
    sketch.draw(4, 10, true);
    sketch.draw(6, 12, false);
    expect([...sketch.values]).toEqual([8, 8.5, 9, 9.5, 10, 11, 12]);
    sketch.clear();
    expect(sketch.isEmpty).toBe(true);
  });

  it('is drawn anew where the pen passes once more, forth or back', () => {
    const sketch = new Sketch(8);
    for (const hour of [2, 4, 6, 8]) sketch.draw(hour, 9, hour === 2);
    sketch.draw(7, 5, true);
    sketch.draw(3, 5, false);
    expect([...sketch.values].slice(3, 8)).toEqual([5, 5, 5, 5, 5]);
    expect(sketch.values[8]).toBe(9);
  });

  it('is a number at every hour, wherever the pen goes', () => {
    const stroke = fc.array(fc.tuple(fc.double({ min: 0, max: 1440, noNaN: true }), fc.boolean()), {
      minLength: 1,
    });
    fc.assert(
      fc.property(stroke, (pens) => {
        const sketch = new Sketch(8);
        for (const [timeH, isDown] of pens) sketch.draw(timeH, timeH / 100, isDown);
        const values = [...sketch.values];
        const last = Math.max(...pens.map(([timeH]) => Math.max(1, Math.round(timeH))));
        expect(values.every(Number.isFinite)).toBe(true);
        expect(values).toHaveLength(last + 1);
      }),
      runsOf(1000),
    );
  });
});
