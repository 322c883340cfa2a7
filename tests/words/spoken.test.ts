import { describe, expect, it } from 'vitest';
import { spokenShape } from '../../src/charts/spokenShape';

const series = (values: number[]) => ({
  key: 'a',
  label: 'Trial A',
  className: '',
  dash: [],
  values: Float64Array.from(values),
});
const format = (value: number) => value.toFixed(1);

describe('what a chart says aloud', () => {
  it('is where a line begins and ends, and between what it stays', () => {
    expect(spokenShape(series([8, 7, 9, 8.5]), { fromH: 0, toH: 3 }, format)).toBe(
      'Trial A goes from 8.0 to 8.5, between 7.0 and 9.0',
    );
  });

  it('is of the stretch on view alone, and ends with the line', () => {
    expect(spokenShape(series([1, 8, 9, 8.5]), { fromH: 1, toH: 60 }, format)).toBe(
      'Trial A goes from 8.0 to 8.5, between 8.0 and 9.0',
    );
  });
});
