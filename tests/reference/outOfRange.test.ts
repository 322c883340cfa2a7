import { describe, expect, it } from 'vitest';
import { commonRange, fittedRanges, isOutOfRange, outOfRange } from '../../shared/seawater';

const reef = { tempC: 25, salinityPractical: 35, phTotal: 8.1 };

describe('the ranges the fits were made in', () => {
  it('all hold in a reef tank', () => {
    expect(outOfRange(reef)).toEqual([]);
  });

  it('name the fits that end before 34 °C, and not those that go on', () => {
    const flags = outOfRange({ ...reef, tempC: 34 });
    expect(flags).toContain('kfPerezFraga1987');
    expect(flags).not.toContain('k1k2Lueker2000');
  });

  it('flag pH above 9.5 whatever the water', () => {
    expect(outOfRange({ ...reef, phTotal: 9.5 })).toEqual([]);
    expect(outOfRange({ ...reef, phTotal: 9.51 })).toEqual(['high-ph']);
  });

  it('count a number that is none as outside of every fit', () => {
    expect(outOfRange({ ...reef, tempC: NaN })).toEqual(Object.keys(fittedRanges));
    expect(outOfRange({ ...reef, phTotal: NaN })).toEqual(['high-ph']);
  });

  it.each(Object.entries(fittedRanges))(
    '%s holds up to both its ends, and not beyond',
    (id, range) => {
      for (const [of, ends] of [
        ['tempC', range.tempC],
        ['salinityPractical', range.salinityPractical],
      ] as const) {
        const [least, most] = ends;
        for (const at of [least, most]) expect(outOfRange({ ...reef, [of]: at })).not.toContain(id);
        for (const at of [least - 1e-6, most + 1e-6]) {
          expect(outOfRange({ ...reef, [of]: at })).toContain(id);
        }
      }
    },
  );

  it('overlap in one window, at whose edge the short question turns', () => {
    const [coldest, warmest] = commonRange.tempC;
    for (const tempC of [coldest - 0.01, coldest, 20, warmest, warmest + 0.01]) {
      const flags = outOfRange({ ...reef, tempC });
      expect(isOutOfRange(tempC, 35, 8.1)).toBe(flags.length > 0);
    }
  });
});
